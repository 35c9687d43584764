/** Being written. */
export default function AtTheKilnScreen() {
  return <p>Being written.</p>;
}
