export default function CompareScreen() {
  return <p>Loads side by side</p>;
}
