/** Being written. */
export default function WaitingScreen() {
  return <p>Being written.</p>;
}
