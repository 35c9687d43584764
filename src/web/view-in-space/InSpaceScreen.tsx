export default function InSpaceScreen() {
  return <p>The load in space</p>;
}
