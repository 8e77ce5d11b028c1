import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

export default defineConfig({
  plugins: [svelte()],
  build: {
    // Inlined files would be data: addresses, which the content security policy refuses.
    assetsInlineLimit: 0,
    // The polyfill is an inline script's worth of code for engines that none of our shells use.
    modulePreload: { polyfill: false },
    target: 'es2022',
  },
});
