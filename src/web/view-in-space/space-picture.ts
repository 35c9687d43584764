import {
  BackSide,
  DirectionalLight,
  FrontSide,
  HemisphereLight,
  type Light,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  type Object3D,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Vector2,
  WebGLRenderer,
} from "three";
import type { Scene as KilnScene } from "../../loading/checker/scene.ts";
import { edgeLines, floorGeometry, probeGeometry, spyholeGeometry, wallGeometry } from "./kiln-in-space.ts";
import { liftsOf } from "./lift.ts";
import { colourLoad, type LoadInSpace, loadInSpace, type PiecePlace } from "./load-in-space.ts";
import { eyeAt, FIRST_LOOK, type Orbit } from "./orbit.ts";
import { Sharpness, STANDING_AFTER_MS } from "./sharpness.ts";
import { outlineOf } from "./solids/outline.ts";
import { coloursOn, type SpaceColours } from "./space-colours.ts";

const OPENING_DEG = 32;
// Two dots each way for one of a plain screen's smooth the edges; more than that of a fine screen's nobody sees.
const DOTS_A_PIXEL = 2;
const AROUND_MM = 20;

/** The kiln in space on a canvas. It draws when something changed, and never by itself. */
export class SpacePicture {
  readonly #canvas: HTMLCanvasElement;
  readonly #renderer: WebGLRenderer;
  readonly #kiln: KilnScene;
  readonly #load: LoadInSpace;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera(OPENING_DEG, 1, 10, 20_000);
  readonly #sky = new HemisphereLight();
  readonly #sun: Light;
  readonly #wall = new MeshLambertMaterial({ side: BackSide, transparent: true, opacity: 0.4, depthWrite: false });
  readonly #floor = new MeshLambertMaterial({ side: FrontSide });
  readonly #lines = new LineBasicMaterial({ transparent: true, opacity: 0.55 });
  readonly #metal = new MeshLambertMaterial();
  readonly #plugged = new MeshBasicMaterial();
  readonly #open = new MeshBasicMaterial();
  #colours: SpaceColours;
  #orbit: Orbit = FIRST_LOOK;
  #liftShare = 0;
  #chosen: PiecePlace | null = null;
  #frame = 0;
  #standing: ReturnType<typeof setTimeout> | undefined;
  readonly #sharpness = new Sharpness(DOTS_A_PIXEL);

  /** @throws Error where the browser gives no WebGL */
  constructor(canvas: HTMLCanvasElement, kiln: KilnScene) {
    this.#canvas = canvas;
    this.#kiln = kiln;
    this.#renderer = new WebGLRenderer({ canvas, antialias: false, alpha: true, powerPreference: "low-power" });
    this.#colours = coloursOn(canvas);
    this.#sun = new DirectionalLight("white", 1.6);
    this.#sun.position.set(-0.5, 1, 0.8);
    this.#load = loadInSpace(kiln);
    this.#scene.add(this.#sky, this.#sun, ...this.#chamber(), this.#load.floor, ...this.#load.levels);
    this.recolour();
    this.resize();
  }

  get orbit(): Orbit {
    return this.#orbit;
  }

  set orbit(orbit: Orbit) {
    this.#orbit = orbit;
    this.#draw(true);
  }

  /** How far the shelves are lifted apart: 0 as they stand, 1 wide. */
  set liftShare(share: number) {
    this.#liftShare = share;
    const { shelves, depthMm } = this.#kiln;
    const lifts = liftsOf(
      shelves.map((shelf) => shelf.topMm),
      depthMm,
      share,
    );
    this.#load.levels.forEach((group, i) => {
      group.position.y = lifts[i] ?? 0;
    });
    this.#draw(true);
  }

  set chosen(place: PiecePlace | null) {
    this.#chosen = place;
    colourLoad(this.#load, this.#colours, place);
    this.#draw();
  }

  /** Takes the look's colours as they are now. */
  recolour(): void {
    const colours = coloursOn(this.#canvas);
    this.#colours = colours;
    this.#sky.color.copy(colours.sky);
    this.#sky.groundColor.copy(colours.under);
    this.#sky.intensity = 2;
    this.#wall.color.copy(colours.wall);
    this.#floor.color.copy(colours.wall);
    this.#lines.color.copy(colours.line);
    this.#metal.color.copy(colours.metal);
    this.#plugged.color.copy(colours.line);
    this.#open.color.copy(colours.open);
    colourLoad(this.#load, colours, this.#chosen);
    this.#draw();
  }

  /** Fits the picture to its place on the screen. */
  resize(): void {
    const { clientWidth, clientHeight } = this.#canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#renderer.setSize(clientWidth, clientHeight, false);
    this.#camera.aspect = clientWidth / clientHeight;
    this.#draw();
  }

  /** The piece under a place of the picture, from its left upper corner, or null. */
  pieceAt(x: number, y: number): PiecePlace | null {
    const { clientWidth, clientHeight } = this.#canvas;
    this.#placeCamera();
    this.#scene.updateMatrixWorld();
    const ray = new Raycaster();
    ray.setFromCamera(new Vector2((x / clientWidth) * 2 - 1, 1 - (y / clientHeight) * 2), this.#camera);
    const [first] = ray.intersectObjects([this.#load.floor, ...this.#load.levels], true);
    const found = this.#load.pieces.find(({ mesh }) => mesh === first?.object);
    return found?.places[first?.instanceId ?? -1] ?? null;
  }

  /** Gives everything back. */
  free(): void {
    cancelAnimationFrame(this.#frame);
    clearTimeout(this.#standing);
    const looks = new Set<Material>();
    this.#scene.traverse((thing: Object3D) => {
      if (thing instanceof Mesh || thing instanceof LineSegments) {
        thing.geometry.dispose();
        looks.add(thing.material as Material);
        if ("isInstancedMesh" in thing) (thing as unknown as { dispose(): void }).dispose();
      }
    });
    for (const look of looks) look.dispose();
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }

  #chamber(): Object3D[] {
    const { kiln } = this.#kiln.request;
    const wall = new Mesh(wallGeometry(kiln), this.#wall);
    wall.renderOrder = -1;
    return [
      wall,
      new Mesh(floorGeometry(kiln), this.#floor),
      new LineSegments(edgeLines(kiln), this.#lines),
      ...kiln.probes.map((probe) => new Mesh(probeGeometry(kiln, probe), this.#metal)),
      ...kiln.spyholes.map((hole) => new Mesh(spyholeGeometry(kiln, hole), hole.open ? this.#open : this.#plugged)),
    ];
  }

  #placeCamera(): void {
    const { reachMm, heightMm } = this.#sight();
    const eye = eyeAt(this.#orbit, { reachMm, heightMm, aspect: this.#camera.aspect, openingDeg: OPENING_DEG });
    this.#camera.position.set(eye.x, eye.y, eye.z);
    this.#camera.lookAt(0, eye.targetY, 0);
    this.#camera.updateProjectionMatrix();
    this.#camera.updateMatrixWorld();
  }

  #sight(): { reachMm: number; heightMm: number } {
    const reach = Math.max(...outlineOf(this.#kiln.chamber).map(([x, y]) => Math.hypot(x, y)));
    const tops = this.#load.levels.map((group, i) => group.position.y + (this.#kiln.shelves[i]?.topMm ?? 0));
    const rise = this.#liftShare === 0 ? 0 : Math.max(0, ...tops);
    return { reachMm: reach + AROUND_MM, heightMm: Math.max(this.#kiln.depthMm, rise + 0.25 * this.#kiln.depthMm) };
  }

  /** Draws with the next picture of the screen. While turning, a slow machine draws fewer dots, and all of them after. */
  #draw(isTurning = false): void {
    cancelAnimationFrame(this.#frame);
    clearTimeout(this.#standing);
    this.#frame = requestAnimationFrame((nowMs) => {
      this.#drawNow(isTurning ? this.#sharpness.whileTurning(nowMs) : this.#sharpness.standing());
    });
    if (isTurning) this.#standing = setTimeout(() => this.#draw(), STANDING_AFTER_MS);
  }

  #drawNow(dots: number): void {
    if (this.#renderer.getPixelRatio() !== dots) this.#renderer.setPixelRatio(dots);
    this.#placeCamera();
    this.#renderer.render(this.#scene, this.#camera);
  }
}
