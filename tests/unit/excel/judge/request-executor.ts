/**
 * Answers the requests of Microsoft's object model out of the stand-in's workbook: each path and action of a request
 * becomes the same call on the stand-in's proxies, in the same order, and then one sync. What is judged is the way
 * the add-in uses the API; what cells hold is the stand-in's.
 */
import type { Area } from "../../../../src/workbench/host/address.ts";
import { checkSize } from "../../../../src/workbench/host/excel/limits.ts";
import { targetOf } from "../../../../src/workbench/host/excel/requests/client-object.ts";
import { RequestContextObject } from "../../../../src/workbench/host/excel/requests/request-context.ts";
import type { Session } from "../../../../src/workbench/host/excel/requests/session.ts";
import { ExcelError } from "../../../../src/workbench/host/excel-error.ts";
import {
  actionKinds,
  type Executor,
  pathKinds,
  type WireAction,
  type WireAnswer,
  type WireBody,
  type WirePath,
} from "./wire-format.ts";

/** One request as it went out and what came back. */
export interface Request {
  readonly bytes: number;
  readonly answerBytes: number;
  readonly body: WireBody;
}

/** Any proxy of the stand-in, whose members go by name here. */
type Face = Record<string, unknown> & { load: (properties?: string) => unknown };

type AnyFunction = (...given: readonly unknown[]) => unknown;

const inApi = (name: string): string =>
  name === "_Runtime" ? "runtime" : name.charAt(0).toLowerCase() + name.slice(1);

const onWire = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

function cannot(what: string): never {
  throw new Error(`The judge cannot answer ${what}. Add it to tests/unit/excel/judge.`);
}

function isNull(face: Face): boolean {
  try {
    return face["isNullObject"] === true;
  } catch {
    // Root objects have no such member, and what was not looked at yet says so.
    return false;
  }
}

/** Loaded properties in the shape that the library wants them: `a/b` as an object within an object. */
function loadedPart(face: Face, paths: readonly string[]): Record<string, unknown> {
  const part: Record<string, unknown> = {};
  for (const path of paths) {
    const [first = "", ...rest] = path.split("/");
    const name = onWire(first);
    part[name] =
      rest.length === 0
        ? face[first]
        : { ...(part[name] as object | undefined), ...loadedPart(face[first] as Face, [rest.join("/")]) };
  }
  return part;
}

function areaBehind(face: Face): Area {
  return targetOf(face)?.() as Area;
}

/** Objects that outlive a request, by the names that the library got for them. */
class References {
  private readonly faces = new Map<string, Face>();
  private readonly names = new Map<Face, string>();

  nameOf(face: Face): string {
    const name = this.names.get(face) ?? `kept ${String(this.names.size + 1)}`;
    this.names.set(face, name);
    this.faces.set(name, face);
    return name;
  }

  find(name: unknown): Face | undefined {
    return typeof name === "string" ? this.faces.get(name) : undefined;
  }
}

/** One request: the objects that its paths lead to, and the answers that wait for the sync. */
class Batch {
  private readonly context: RequestContextObject;
  private readonly references: References;
  private readonly apiNames: ReadonlyMap<string, string>;
  private readonly body: WireBody;
  private readonly found = new Map<number, Face>();
  private readonly answers: { readonly action: WireAction; readonly value: () => unknown }[] = [];

  constructor(
    context: RequestContextObject,
    references: References,
    apiNames: ReadonlyMap<string, string>,
    body: WireBody,
  ) {
    this.context = context;
    this.references = references;
    this.apiNames = apiNames;
    this.body = body;
  }

  async carryOut(): Promise<WireAnswer> {
    for (const action of this.body.Actions) this.answers.push({ action, value: this.perform(action) });
    await this.context.sync();
    return { Body: { Results: this.answers.map(({ action, value }) => ({ ActionId: action.Id, Value: value() })) } };
  }

  private pathOf(id: number): WirePath {
    return this.body.ObjectPaths[String(id)] ?? cannot(`a path ${String(id)} that the request lacks`);
  }

  private at(id: number): Face {
    const face = this.found.get(id) ?? this.follow(this.pathOf(id));
    this.found.set(id, face);
    return face;
  }

  /** Arguments with objects in the place of their paths; optional ones at the end arrive as null. */
  private given({ ArgumentInfo: info }: WireAction | WirePath): unknown[] {
    const all = (info?.Arguments ?? []).map((value, index) => {
      const id = info?.ReferencedObjectPathIds?.[index];
      return typeof id === "number" && id > 0 ? this.at(id) : value;
    });
    const last = all.findLastIndex((value) => value !== null && value !== undefined);
    return all.slice(0, last + 1);
  }

  private follow(path: WirePath): Face {
    const { ObjectPathType: kind, Name: name } = path;
    if (kind === pathKinds.root) return this.context.workbook as unknown as Face;
    if (kind === pathKinds.reference) return this.references.find(name) ?? cannot(`the reference ${name}`);
    const parent = this.at(path.ParentObjectPathId ?? cannot(`the path ${name} without a parent`));
    if (kind === pathKinds.property)
      return name === "_Runtime" ? (this.context.runtime as unknown as Face) : (parent[inApi(name)] as Face);
    const given = this.given(path);
    const kept = this.references.find(given[0]);
    if (kept !== undefined) return kept;
    if (kind === pathKinds.item) return (parent["getItem"] as AnyFunction)(...given) as Face;
    if (kind !== pathKinds.method) cannot(`a path of kind ${String(kind)}`);
    if (name === "GetItemAt")
      return (parent["items"] as readonly Face[])[Number(given[0])] ?? cannot(`GetItemAt(${String(given[0])})`);
    // The library makes getRowsBelow(n) of it; the stand-in has getRowsBelow itself.
    if (name === "GetBoundingRect") return this.boundingRange(parent, given[0] as Face);
    return (parent[inApi(name)] as AnyFunction)(...given) as Face;
  }

  private boundingRange(one: Face, other: Face): Face {
    const find = (): Area => {
      const [a, b] = [areaBehind(one), areaBehind(other)];
      const [row, column] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
      return {
        sheet: a.sheet,
        row,
        column,
        rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
        columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
      };
    };
    return this.context.make.range(this.context, { what: "bounding range", find }) as unknown as Face;
  }

  /** Does what the action says; the value answers it once the batch has run. */
  private perform(action: WireAction): () => unknown {
    const face = this.at(action.ObjectPathId);
    const nothing = (): unknown => ({});
    switch (action.ActionType) {
      case actionKinds.make:
        return () => this.made(face, this.pathOf(action.ObjectPathId));
      case actionKinds.query:
        return this.query(face, action);
      case actionKinds.call:
        return this.call(face, action);
      case actionKinds.set: {
        const plain = inApi(action.Name);
        face[plain in face ? plain : (this.apiNames.get(action.Name) ?? plain)] = this.given(action)[0];
        return nothing;
      }
      default:
        return cannot(`an action of kind ${String(action.ActionType)}`);
    }
  }

  private made(face: Face, { ObjectPathType: kind }: WirePath): unknown {
    if (isNull(face)) return null;
    if (kind !== pathKinds.method && kind !== pathKinds.item) return {};
    const name = this.references.nameOf(face);
    // A range lives on by its reference, a thing in a collection by its id.
    return "getRowsBelow" in face ? { _ReferenceId: name } : { Id: name };
  }

  private call(face: Face, action: WireAction): () => unknown {
    if (action.Name === "_KeepReference")
      return () => (isNull(face) ? null : { _ReferenceId: this.references.nameOf(face) });
    // Housekeeping of the library's own, such as the release of references.
    if (action.Name.startsWith("_")) return () => ({});
    const back = (face[inApi(action.Name)] as AnyFunction)(...this.given(action));
    return () => (typeof back === "object" && back !== null && !("load" in back) && "value" in back ? back.value : {});
  }

  private query(face: Face, { QueryInfo: info }: WireAction): () => unknown {
    const wanted = (info?.Select ?? []).map(String);
    if (wanted.includes("*")) cannot("a load that names no property");
    const paths = wanted.filter((path) => path !== "$none");
    if (!("items" in face)) {
      face.load(paths.join(","));
      return () => (isNull(face) ? null : loadedPart(face, paths));
    }
    face.load(paths.length === 0 ? "items/$none" : paths.map((path) => `items/${path}`).join(","));
    return () =>
      isNull(face)
        ? null
        : {
            _Items: (face["items"] as readonly Face[]).map((item) => ({
              ...loadedPart(item, paths),
              _Id: this.references.nameOf(item),
            })),
          };
  }
}

function refused({ code, message, debugInfo }: ExcelError): WireAnswer {
  const error = {
    Code: code,
    Message: message,
    Location: debugInfo.errorLocation,
    HttpStatusCode: 400,
    ActionIndex: 0,
  };
  return { Body: { Results: [], Error: error } };
}

/** One for each request context. Sizes are held to what Excel on the web takes and gives, whichever build asks. */
export function requestExecutor(
  session: Session,
  apiNames: ReadonlyMap<string, string>,
  seen: (request: Request) => void,
): Executor {
  const context = new RequestContextObject(session);
  const references = new References();

  async function answered(work: () => Promise<WireAnswer>): Promise<WireAnswer> {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof ExcelError)) throw error;
      return refused(error);
    }
  }

  return {
    executeAsync: async (_custom, _flags, message) => {
      // Through text and back, as over the wire: no object of the library's reaches the stand-in.
      const sent = JSON.stringify(message.Body);
      const body = JSON.parse(sent) as WireBody;
      const bytes = Buffer.byteLength(sent);
      let answerBytes = 0;
      const answer = await answered(async () => {
        checkSize(bytes, "Request");
        const back = await new Batch(context, references, apiNames, body).carryOut();
        answerBytes = Buffer.byteLength(JSON.stringify(back));
        checkSize(answerBytes, "Response");
        return back;
      });
      seen({ bytes, answerBytes, body });
      return JSON.parse(JSON.stringify(answer)) as WireAnswer;
    },
  };
}
