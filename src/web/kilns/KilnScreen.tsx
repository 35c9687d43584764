/** Being written. */
export default function KilnScreen() {
  return <p>Being written.</p>;
}
