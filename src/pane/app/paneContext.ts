import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { WorkbookPort } from '../../hosts/port/port.ts';

export const PortContext = createContext<WorkbookPort | null>(null);

/** The program that holds the workbook, for any part of the pane. */
export function usePort(): WorkbookPort {
  const port = useContext(PortContext);
  if (!port) throw new Error('The pane was built without a workbook port.');
  return port;
}
