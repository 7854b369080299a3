/** The build of the checker that is JavaScript alone: the others start a program or Java. */
declare module 'recheck/lib/browser.js' {
  export { checkSync } from 'recheck';
}
