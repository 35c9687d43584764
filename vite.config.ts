import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";

// The application in the browser: src/web → dist/web, which the server hands out.
export default defineConfig({
  root: "src/web",
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    target: "es2022",
    sourcemap: false,
    // The view in space alone weighs this much, and is fetched when she asks for it.
    chunkSizeWarningLimit: 650,
    // The domain keeps its schemas beside its arithmetic. Making one does nothing else, so a screen that only counts
    // leaves out the schemas, and with them the whole library they are made with.
    rolldownOptions: {
      treeshake: {
        manualPureFunctions: ["OneOf", "Type"],
        moduleSideEffects: [{ test: /node_modules\/typebox\//, sideEffects: false }],
      },
    },
  },
  // The looks of parts are put together by what already makes them small.
  css: { transformer: "lightningcss" },
  plugins: [react(), keptOnTheDevice(), compressedBeforehand()],
  server: { proxy: { "/api": "http://127.0.0.1:7420" } },
});

/**
 * The program kept on the device, all of it, so that every screen opens without a network. What the studio says is kept
 * by src/web/studio; here only pictures are, for they are large and never change.
 */
function keptOnTheDevice() {
  return VitePWA({
    filename: "sw.js",
    // src/web/shell/keep-program.ts does it: the page runs no script that stands in the page.
    injectRegister: null,
    registerType: "prompt",
    manifest: {
      id: "/",
      name: "Wareboard",
      short_name: "Wareboard",
      description: "Plans the loads of one small kiln.",
      start_url: "/",
      display: "standalone",
      background_color: "#f5efe4",
      theme_color: "#f5efe4",
      icons: [
        { src: "/icon-192.png", sizes: "192x192", type: "image/png" },
        { src: "/icon-512.png", sizes: "512x512", type: "image/png" },
        { src: "/icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        { src: "/icon.svg", sizes: "any", type: "image/svg+xml" },
      ],
    },
    workbox: {
      globPatterns: ["**/*.{js,css,html,woff2,svg,png}"],
      // The view in space is as heavy as all the rest: it is kept once she has looked at it.
      globIgnores: ["**/SpaceCanvas-*.js"],
      inlineWorkboxRuntime: true,
      sourcemap: false,
      navigateFallback: "/index.html",
      navigateFallbackDenylist: [/^\/api\//],
      maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
      runtimeCaching: [
        {
          urlPattern: /\/assets\/SpaceCanvas-[^/]+\.js$/,
          handler: "CacheFirst",
          method: "GET",
          options: { cacheName: "in-space", expiration: { maxEntries: 1 } },
        },
        {
          urlPattern: /\/api\/photos\/[^/]+\/picture$/,
          handler: "CacheFirst",
          method: "GET",
          options: {
            cacheName: "pictures",
            cacheableResponse: { statuses: [200] },
            expiration: { maxEntries: 400, purgeOnQuotaError: true },
          },
        },
      ],
    },
  });
}

/**
 * Every file of text compressed beside itself, once, when it is built: a phone on the home network fetches a third of it.
 * Brotli goes where the line is encrypted, gzip everywhere.
 */
function compressedBeforehand(): Plugin {
  let folder = "";
  return {
    name: "compressed-beforehand",
    apply: "build",
    configResolved: ({ root, build }) => {
      folder = resolve(root, build.outDir);
    },
    closeBundle: {
      // After the service worker is written.
      order: "post",
      sequential: true,
      handler: () => {
        for (const path of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
          if (!/\.(js|css|html|svg|webmanifest)$/.test(path)) continue;
          const file = join(folder, path);
          const bytes = readFileSync(file);
          // Quality 9 of 11: 7 % larger than the best, in a fifth of the time.
          writeFileSync(`${file}.br`, brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }));
          writeFileSync(`${file}.gz`, gzipSync(bytes, { level: 9 }));
        }
      },
    },
  };
}
