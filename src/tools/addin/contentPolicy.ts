/** Where Microsoft serves Office.js to the public. Source: Microsoft, "Referencing the Office JavaScript API library". */
export const OFFICE_CDN = 'https://appsforoffice.microsoft.com';

/** Pages that may show ours in a frame: Excel on the web. Source: reports of users; Microsoft publishes no list. */
export const FRAMING_PAGES =
  "'self' https://*.officeapps.live.com https://*.sharepoint.com https://*.office.com https://excel.cloud.microsoft";

/**
 * What our pages may load and reach: their own origin, and with `cdn` the scripts of the public Office.js. A page can
 * state all of it about itself save who may frame it; that part a server has to send (W3C, Content Security Policy 3,
 * section 4.2: frame-ancestors is ignored in a meta element).
 */
export function contentPolicy(cdn: boolean): string {
  return [
    "default-src 'none'",
    `script-src 'self'${cdn ? ` ${OFFICE_CDN}` : ''}`,
    "style-src 'self'",
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "frame-src 'none'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}
