/** Whether this browser draws in space. Asked before the drawing is sent for. */
export function canDrawInSpace(): boolean {
  try {
    const context = document.createElement("canvas").getContext("webgl2");
    context?.getExtension("WEBGL_lose_context")?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
}
