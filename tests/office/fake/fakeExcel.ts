import type { Area } from '../../../src/cells/sheet.ts';
import { reference } from '../../../src/hosts/formats/reference.ts';
import { loadOffice, type OfficeGlobals } from '../load.ts';
import { areaAt } from './address.ts';
import { type BeforeAction, carryOut, type References } from './batch.ts';
import type { FakeBook } from './book.ts';
import { actionType, delayForCellEdit, type RequestBody, type ResponseBody } from './request.ts';
import { workbookObject } from './workbookObject.ts';

/** What Excel on the web accepts and hands over in one round trip (public reference, limits). */
const mostBytes = 5_000_000;

export interface RoundTrip {
  readonly body: RequestBody;
  readonly requestBytes: number;
  readonly responseBytes: number;
  readonly error: string | undefined;
}

interface Bridge {
  onMessageFromHost?: (message: string) => void;
  sendMessageToHost(message: string): void;
}

interface RequestMessage {
  readonly id: number;
  readonly flags: number;
  readonly message: { readonly body: RequestBody };
}

/** A fake Excel behind the real library: answers its requests from a `FakeBook` and counts them. */
export class FakeExcel {
  readonly library: OfficeGlobals;
  /** Every request, but those by which the library only lets go of references. */
  readonly roundTrips: RoundTrip[] = [];
  readonly suspensions: ('calculation' | 'screen')[] = [];
  /** May throw a HostError to let an action fail. */
  beforeAction: BeforeAction = () => undefined;
  /** Called before a request is answered; an HTTP status says that the connection broke before (`undone`) or after it was carried out. */
  onRequest: () => { readonly status: number; readonly undone: boolean } | undefined = () => undefined;
  readonly #bridge: Bridge;
  readonly #references: References = new Map();
  #listening = false;
  #following = false;
  #editing = false;
  readonly #waiting: (() => void)[] = [];

  /** `apiVersion` is the newest version of ExcelApi that this Excel has; a `library` that another Excel is done with can be used again. */
  constructor(
    readonly book: FakeBook,
    readonly apiVersion = '1.17',
    library = loadOffice(),
  ) {
    this.library = library;
    Object.assign(this.library.Office.context, {
      requirements: {
        isSetSupported: (set: string, version = '1.1') =>
          set !== 'ExcelApi' || isAtMost(version, this.apiVersion),
      },
    });
    this.#bridge = {
      sendMessageToHost: (text) => {
        this.#receive(JSON.parse(text) as RequestMessage, text);
      },
    };
    this.library.OfficeExtension.HostBridge.init(this.#bridge);
  }

  /** The user begins to edit a cell. */
  startEditing(): void {
    this.#editing = true;
  }

  /** The user leaves the cell; what waited for it is carried out. */
  stopEditing(): void {
    this.#editing = false;
    for (const go of this.#waiting.splice(0)) go();
  }

  /** Someone enters something into a cell: the user, or this add-in by another way. */
  change(
    sheetName: string,
    address: string,
    entry: unknown,
    triggerSource?: 'Unknown' | 'ThisLocalAddin',
  ): void {
    const sheet = this.book.find(sheetName);
    if (!sheet) throw new Error(`no sheet ${sheetName}`);
    const { top, left } = areaAt(address);
    this.book.enter(sheet, top, left, entry);
    this.#tell(sheet.id, address, triggerSource);
  }

  /** The user selects an area. */
  select(sheetName: string, area: Area): void {
    const sheet = this.book.find(sheetName);
    if (!sheet) throw new Error(`no sheet ${sheetName}`);
    this.book.selection = { sheet, areas: [area] };
    this.#tellSelection();
  }

  #receive({ id, flags, message }: RequestMessage, text: string): void {
    const broken = this.onRequest();
    const answer = (): void => {
      const done = broken?.undone === true ? undefined : this.#answer(message.body, Buffer.byteLength(text));
      const response = broken ? {} : done;
      queueMicrotask(() => {
        this.#bridge.onMessageFromHost?.(
          JSON.stringify({
            id,
            type: 2,
            message: { statusCode: broken?.status ?? 200, headers: {}, body: response },
          }),
        );
      });
    };
    if (this.#editing && (flags & delayForCellEdit) !== 0) this.#waiting.push(answer);
    else answer();
  }

  #answer(body: RequestBody, requestBytes: number): ResponseBody {
    const before = this.book.selection;
    const { response, responseBytes } = this.#response(body, requestBytes);
    if (this.book.selection !== before) this.#tellSelection();
    const isCleanup =
      body.Actions.some(({ Name }) => Name === '_RemoveReference') &&
      body.Actions.every(
        ({ Name, ActionType }) => Name === '_RemoveReference' || ActionType === actionType.instantiate,
      );
    if (!isCleanup) {
      this.roundTrips.push({ body, requestBytes, responseBytes, error: response.Error?.Code });
    }
    return response;
  }

  #response(body: RequestBody, requestBytes: number): { response: ResponseBody; responseBytes: number } {
    const refused = (code: string): { response: ResponseBody; responseBytes: number } => ({
      response: { Results: [], Error: { Code: code, Message: code } },
      responseBytes: 0,
    });
    if (this.#editing) return refused('InvalidOperationInCellEditMode');
    if (requestBytes > mostBytes) return refused('RequestPayloadSizeLimitExceeded');
    const workbook = workbookObject(this.book, {
      listen: (isListening) => {
        this.#listening = isListening;
      },
      follow: (isFollowing) => {
        this.#following = isFollowing;
      },
      suspended: (what) => this.suspensions.push(what),
    });
    const response = carryOut(body, workbook, this.#references, this.beforeAction);
    const responseBytes = Buffer.byteLength(JSON.stringify(response));
    return responseBytes > mostBytes
      ? refused('ResponsePayloadSizeLimitExceeded')
      : { response, responseBytes };
  }

  /** Tells of a change as Excel does; who caused it is told from ExcelApi 1.14 on. */
  #tell(worksheetId: string, address: string, triggerSource: string | undefined): void {
    if (!this.#listening) return;
    const event = {
      type: 'WorksheetChanged',
      changeType: 'RangeEdited',
      source: 'Local',
      worksheetId,
      address,
      ...(isAtMost('1.14', this.apiVersion) && { triggerSource: triggerSource ?? 'Unknown' }),
    };
    this.#send(10, event);
  }

  /** Tells that something else is selected, whoever selected it; the library asks for it as its event 14. */
  #tellSelection(): void {
    const { selection } = this.book;
    if (!this.#following || !selection) return;
    const address = selection.areas.map(reference).join();
    this.#send(14, { type: 'WorksheetSelectionChanged', worksheetId: selection.sheet.id, address });
  }

  #send(messageType: number, event: object): void {
    const entry = {
      messageCategory: 65_536,
      messageType,
      targetId: 'Workbook',
      message: JSON.stringify(event),
    };
    this.#bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries: [entry] } }));
  }
}

function isAtMost(version: string, newest: string): boolean {
  return Number(version.split('.')[1]) <= Number(newest.split('.')[1]);
}
