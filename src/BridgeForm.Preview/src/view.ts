/** What the page is told about a bridge. Metres and radians; x from A to B, y up, z right. Texts are in the project's units. */
export interface BridgeView {
  name: string;
  lead: string;
  /** What all checks come to, in one sentence for people who read no formulas. */
  verdict: string;
  caution: string;
  span: number;
  rise: number;
  /** Level of the rope axis at half the span. */
  ropeLowY: number;
  ropeSpacing: number;
  ropeRadius: number;
  /** Vertical distance from the deck's surface to the cap's top. */
  guard: number;
  clearWidth: number;
  /** Half the width between the posts' feet. */
  deckHalf: number;
  /** What stands at the top before all figures. */
  headlines: HeadlineView[];
  /** Titles of the checks that do not hold, worst first. */
  fails: string[];
  facts: Fact[];
  frames: FrameView[];
  bays: string[];
  /** How far parts of a role leave their places when a frame is taken apart: along the bridge, up, and outwards. */
  leaving: Record<string, Triple>;
  pieces: PieceView[];
  cases: CaseView[];
  checks: CheckView[];
  /** Ground line as (x, y); empty when the project names none. */
  ground: [number, number][];
  water: number | null;
  /** Levels at A and B: top of the landing under the end base, and the walking surface behind it. */
  landings: [Landing, Landing];
  dimensions: Dimension[];
  section: Dimension[];
}

export interface HeadlineView { label: string; text: string; danger: boolean }

/** Two facts carry `key`: they stand large at the top. */
export interface Fact { label: string; text: string; key: boolean }

export interface FrameView {
  name: string;
  x: number;
  y: number;
  /** Slope of the frame's own axis t. */
  turn: number;
  end: boolean;
  /** Level of the base's bottom face and of the walking surface, along the frame's up axis from the node. */
  bottom: number;
  deck: number;
}

export interface PieceView {
  mark: string;
  role: string;
  /** What it does, in plain words. */
  words: string;
  quantity: number;
  /** Label and text, in the order to be shown. */
  lines: [string, string][];
  /** Places where it stands turned or rolled over, and the lines that hold there instead. */
  turned: { parts: string[]; lines: [string, string][] }[];
}

export interface CaseView {
  id: string;
  title: string;
  text: string;
  /** One point a frame. */
  nodes: [number, number][];
  /** Load on each node beyond the empty bridge's, newtons on the more heavily loaded rope. */
  extra: number[];
  /** Rise of the deck from left to right, radians. */
  crossSlope: number;
  midSpanDrop: number;
}

/** A check: its sentence for everybody, formula and source for those who open it. */
export interface CheckView { title: string; status: 'pass' | 'warn' | 'fail' | 'engineer'; sentence: string; detail: string; source: string }

export interface Landing {
  top: number;
  walk: number;
  gap: number;
  /** Half the end base's size along the bridge. */
  baseHalf: number;
  /** Where the rope ends behind the support, when the project names an anchor. */
  stay: [number, number] | null;
  /** What stands there, where the project says so. */
  support?: SupportKind;
}

/** What holds the ropes at one end, made by others. */
export type SupportKind = 'post' | 'tree' | 'platform' | 'abutment';

export type Triple = [number, number, number];

/** A measured distance in the empty bridge: its two points, and where the line with the value stands. */
export interface Dimension {
  label: string;
  text: string;
  from: Triple;
  to: Triple;
  lineFrom: Triple;
  lineTo: Triple;
  /** Where the words of an upright line stand. */
  words: 'beside' | 'over' | 'under';
}

/** Everything `show` needs: the description and the bytes of model.glb. */
export interface BridgeFile { view: BridgeView; glb: ArrayBuffer }
