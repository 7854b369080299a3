import { hasLegend } from '../../../../sheets/charts/legend.ts';
import type { ChartModel } from '../../../../sheets/charts/model.ts';
import { chartLooks } from '../../../formats/chartLooks.ts';
import type { Dialect } from '../package/namespaces.ts';
import { plot } from './plots.ts';
import type { References } from './references.ts';
import { boxShape } from './shapes.ts';
import { textSize, title } from './text.ts';

/**
 * A chart's part (CT_ChartSpace; ECMA-376 part 1, 21.2). Blanks are gaps; hidden rows are drawn too.
 */
export function chartPart(chart: ChartModel, references: References, dialect: Dialect): string {
  const legend = hasLegend(chart) ? '<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend>' : '';
  const untitled = chart.title === undefined || chart.title === '';
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<c:chartSpace xmlns:c="${dialect.drawing}/chart" xmlns:a="${dialect.drawing}/main">`,
    `<c:roundedCorners val="0"/><c:chart>${title(chart.title, chartLooks.titleSize, true)}`,
    `<c:autoTitleDeleted val="${Number(untitled)}"/>`,
    `<c:plotArea><c:layout/>${plot(chart, references)}<c:spPr><a:noFill/></c:spPr></c:plotArea>`,
    `${legend}<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>`,
    `${boxShape('FFFFFF', chartLooks.frameColor)}${textSize(chartLooks.textSize)}</c:chartSpace>`,
  ].join('');
}
