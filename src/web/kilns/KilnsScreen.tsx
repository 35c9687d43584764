/** Being written. */
export default function KilnsScreen() {
  return <p>Being written.</p>;
}
