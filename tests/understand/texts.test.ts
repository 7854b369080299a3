import { describe, expect, it } from 'vitest';
import { isNumberText, isQuantityText } from '../../src/audit/read/understand/blocks/cellKind.ts';
import { labelText } from '../../src/audit/read/understand/blocks/context.ts';
import { cellValue } from '../../src/audit/read/understand/readings/cellValue.ts';
import { readHeader } from '../../src/audit/read/understand/vocabulary/headerText.ts';
import { tokensOf } from '../../src/audit/read/understand/vocabulary/lexicon.ts';
import { statedUnit } from '../../src/audit/read/understand/vocabulary/statedUnit.ts';

const detectionOf = (text: string): unknown => statedUnit(text)?.unit?.detection;
const style = { plainText: { decimal: '.' }, decimalComma: false } as const;

describe('a unit', () => {
  it('is counted peak to peak in any language, whatever stands between the words', () => {
    const english = detectionOf('µm p-p');
    expect(english).toBeDefined();
    for (const text of [
      'µm Spitze-Spitze',
      'µm Spitze  zu   Spitze',
      'µm spitze - zu - spitze',
      'µm crête à crête',
      'µm c/c',
      'µm pico a pico',
      'µm picco–picco',
      'µm p. a. p.',
    ])
      expect([text, detectionOf(text)]).toEqual([text, english]);
  });

  it('is counted from zero to peak in any language', () => {
    const english = detectionOf('µm 0-p');
    expect(english).toBeDefined();
    expect(english).not.toEqual(detectionOf('µm p-p'));
    for (const text of [
      'µm null spitze',
      'µm Null - Spitze',
      'µm zéro  crête',
      'µm 0 – pico',
      'µm zero/picco',
    ])
      expect([text, detectionOf(text)]).toEqual([text, english]);
  });

  it('of volts loses the words for direct voltage and keeps its volts', () => {
    const volts = statedUnit('V')?.unit;
    for (const text of ['V cc', 'Vdc', 'v  gs', 'V c.c.'])
      expect([text, statedUnit(text)?.unit?.dimension]).toEqual([text, volts?.dimension]);
    expect(statedUnit('V cctv')).toBeUndefined();
  });

  it('of full scale is a percentage with or without brackets', () => {
    for (const text of ['% FS', '(% of full scale)', 'percent  full scale]', '%FS'])
      expect([text, statedUnit(text)?.ofScale]).toEqual([text, true]);
    expect(statedUnit('%')?.ofScale).toBe(false);
    expect(statedUnit('% red')).toBeUndefined();
  });
});

describe('a header', () => {
  it('has its coverage factor apart from its unit', () => {
    for (const inside of ['%, k=3', '%;  K = 3', 'k=3, %']) {
      const { coverage, unit } = readHeader(`Uncertainty (${inside})`);
      expect([inside, coverage, unit?.unit?.dimension]).toEqual([inside, 3, 'percent']);
    }
    expect(readHeader('Uncertainty (%)').coverage).toBeNull();
  });

  it('has the words that stand together in it', () => {
    expect(tokensOf('alarmHigh gapVOLTAGE kHz')).toEqual(['alarm', 'high', 'gap', 'voltage', 'khz']);
  });

  it('in front of a value loses its colon', () => {
    const place = { sheet: 'A', row: 1, column: 1 };
    expect(labelText({ place, text: 'Machine : : K-1', value: 'K-1' })).toBe('Machine');
    expect(labelText({ place, text: 'Machine:', value: 'K-1' })).toBe('Machine:');
  });
});

describe('a cell', () => {
  it('is a number in a text, a sign before it and a percent sign behind it', () => {
    for (const text of ['7,94', '-9.8', '> 160', '<>12 500.5', '1e-3 %', '80\u00a0%'])
      expect([text, isNumberText(text)]).toEqual([text, true]);
    for (const text of ['7 mil', '1e-3.5', '%', '5 % %', '12\u00a03'])
      expect([text, isNumberText(text)]).toEqual([text, false]);
  });

  it('has a number with its unit, or with a remark in brackets', () => {
    expect(cellValue('7.86   mV/µm', style)).toMatchObject({ is: 'number', value: 7.86 });
    expect(cellValue('7.86 mV/µm (old probe)', style)).toMatchObject({ doubt: 'remark', value: 7.86 });
    expect(cellValue('7.86 mV/µm (old probe)', style)).toHaveProperty('unit.text', 'mV/µm');
    expect(cellValue('7.86 [see (1)]', style)).toMatchObject({ doubt: 'remark', value: 7.86, unit: null });
    expect(cellValue('7.86 mV/µm ()', style)).toMatchObject({ doubt: 'remark', unit: null });
    expect(cellValue('ca.  7.86 mV/µm', style)).toMatchObject({ doubt: 'about', value: 7.86 });
    expect(cellValue('7.86 mV/µm\n7.9 mV/µm', style)).toMatchObject({ is: 'text' });
  });
});

describe('numbers written as texts', () => {
  it.each(['−9.8', '–9,8', '~160', '≈ 7,94', '< 190', '45 %', '1 234,5'])('%s is one', (text) => {
    expect(isNumberText(text)).toBe(true);
  });

  it.each(['7.9 mV/µm', '~160 mV/mil', '−9,8 V'])('%s is one with its unit', (text) => {
    expect([isNumberText(text), isQuantityText(text)]).toEqual([false, true]);
  });

  it.each(['VE-101', '1X', '31-VT-1', '10 bar gauge test', '−', ''])('“%s” is none', (text) => {
    expect([isNumberText(text), isQuantityText(text)]).toEqual([false, false]);
  });
});
