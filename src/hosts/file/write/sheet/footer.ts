import { footerText, pageNumbers } from '../../../formats/footer.ts';
import { escapeXml } from '../xml/text.ts';

/** A page footer: the text at the left, "Page n of m" at the right. */
export function headerFooter(text: string): string {
  const fitted = footerText(text);
  const left = fitted === '' ? '' : `&L${fitted}`;
  return `<headerFooter><oddFooter>${escapeXml(`${left}&R${pageNumbers}`)}</oddFooter></headerFooter>`;
}
