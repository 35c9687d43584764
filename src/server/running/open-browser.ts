import { spawn } from "node:child_process";

/** Whether there is a screen to open a browser on, and nobody who does not want one. */
export function canOpenBrowser(environment: NodeJS.ProcessEnv, platform: NodeJS.Platform): boolean {
  if (environment.CI) return false;
  if (platform === "win32" || platform === "darwin") return !environment.SSH_CONNECTION;
  return Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}

/** Opens an address in her browser. Where that fails, the address printed in the terminal is enough. */
export function openBrowser(address: string, platform: NodeJS.Platform = process.platform): void {
  const [command, ...words] =
    platform === "win32" ? ["cmd", "/c", "start", "", address] : [platform === "darwin" ? "open" : "xdg-open", address];
  const child = spawn(command as string, words, { stdio: "ignore", detached: true });
  child.on("error", () => {});
  child.unref();
}
