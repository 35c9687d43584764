export default function LoadsScreen() {
  return <p>Loads</p>;
}
