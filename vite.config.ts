import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

// The application in the browser: src/web → dist/web, which the server hands out.
export default defineConfig({
  root: "src/web",
  build: { outDir: "../../dist/web", emptyOutDir: true, target: "es2022", sourcemap: false },
  plugins: [react()],
  server: { proxy: { "/api": "http://127.0.0.1:7420" } },
});
