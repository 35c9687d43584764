/** Being written. */
export default function MaterialsScreen() {
  return <p>Being written.</p>;
}
