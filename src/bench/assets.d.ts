/// <reference lib="dom" />
/// <reference types="vite/client" />
