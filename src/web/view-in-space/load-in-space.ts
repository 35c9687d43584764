import { type BufferGeometry, Group, InstancedMesh, Matrix4, Mesh, MeshLambertMaterial } from "three";
import { mergeGeometries } from "three/addons/utils/BufferGeometryUtils.js";
import type { PostInPlace } from "../../loading/checker/posts-in-place.ts";
import type { Scene as KilnScene, PieceInPlace } from "../../loading/checker/scene.ts";
import { type Upright, widestMm } from "../../loading/solids/upright.ts";
import { radians } from "../../measures/angle.ts";
import type { PlanPoint } from "./solids/outline.ts";
import { outlineOf } from "./solids/outline.ts";
import { pieceGeometry } from "./solids/piece-geometry.ts";
import { slabGeometry } from "./solids/slab-geometry.ts";
import type { SpaceColours } from "./space-colours.ts";

/** A piece by its place in the plan. */
export interface PiecePlace {
  readonly level: number;
  readonly placement: number;
}

/** All pieces of one kind on one level: one call to the graphics card. */
export interface PiecesOfKind {
  readonly mesh: InstancedMesh;
  readonly kind: number;
  readonly places: readonly PiecePlace[];
}

/** A load as meshes, a group for each level so that it can be lifted as one. */
export interface LoadInSpace {
  /** What stands on the kiln's floor: posts. */
  readonly floor: Group;
  readonly levels: readonly Group[];
  readonly pieces: readonly PiecesOfKind[];
  readonly shelfLook: MeshLambertMaterial;
  readonly postLook: MeshLambertMaterial;
  readonly pieceLook: MeshLambertMaterial;
}

/**
 * Builds a load's shelves, posts and pieces. Posts go with whatever they stand on.
 *
 * @param scene the plan set up in its kiln
 */
export function loadInSpace(scene: KilnScene): LoadInSpace {
  const shelfLook = new MeshLambertMaterial();
  const postLook = new MeshLambertMaterial();
  const pieceLook = new MeshLambertMaterial();
  const levels = scene.shelves.map((shelf) => {
    const group = new Group();
    group.add(new Mesh(slabGeometry(outlineOf(shelf.region), shelf.undersideMm, shelf.topMm), shelfLook));
    return group;
  });
  const floor = new Group();
  for (const [standsOn, group] of [[null, floor] as const, ...levels.map((each, i) => [i, each] as const)]) {
    const geometry = postsGeometry(scene.posts.filter((post) => post.standsOn === standsOn));
    if (geometry) group.add(new Mesh(geometry, postLook));
  }
  const pieces = scene.request.ware.flatMap((ware, kind) => {
    const ofKind = scene.pieces.filter((piece) => piece.ware === ware);
    if (ofKind.length === 0) return [];
    const geometry = pieceGeometry(ware);
    return levels.flatMap((group, level) => {
      const here = ofKind.filter((piece) => piece.level === level);
      if (here.length === 0) return [];
      const mesh = instances(scene, geometry, pieceLook, here);
      group.add(mesh);
      return [{ mesh, kind, places: here.map(({ placement }) => ({ level, placement })) }];
    });
  });
  return { floor, levels, pieces, shelfLook, postLook, pieceLook };
}

/** Colours everything; a chosen piece in the strong colour. */
export function colourLoad(load: LoadInSpace, colours: SpaceColours, chosen: PiecePlace | null): void {
  load.shelfLook.color.copy(colours.shelf);
  load.postLook.color.copy(colours.post);
  for (const { mesh, kind, places } of load.pieces) {
    const usual = colours.kinds[kind % colours.kinds.length] ?? colours.metal;
    places.forEach(({ level, placement }, i) => {
      const isChosen = chosen !== null && chosen.level === level && chosen.placement === placement;
      mesh.setColorAt(i, isChosen ? colours.chosen : usual);
    });
    if (mesh.instanceColor) mesh.instanceColor.needsUpdate = true;
  }
}

function instances(
  scene: KilnScene,
  geometry: BufferGeometry,
  look: MeshLambertMaterial,
  pieces: readonly PieceInPlace[],
): InstancedMesh {
  const mesh = new InstancedMesh(geometry, look, pieces.length);
  const matrix = new Matrix4();
  pieces.forEach((piece, i) => {
    const level = scene.plan.levels[piece.level];
    const turnDeg = level?.placements[piece.placement]?.turnDeg ?? 0;
    matrix.makeRotationY(radians(turnDeg)).setPosition(piece.x, level?.topMm ?? 0, -piece.y);
    mesh.setMatrixAt(i, matrix);
  });
  mesh.computeBoundingSphere();
  return mesh;
}

function postsGeometry(posts: readonly PostInPlace[]): BufferGeometry | null {
  const blocks = posts.flatMap((post) => post.stack.map(blockOf));
  if (blocks.length === 0) return null;
  const whole = mergeGeometries(blocks);
  for (const block of blocks) block.dispose();
  return whole;
}

function blockOf(post: Upright): BufferGeometry {
  const [bottom, top] = [post.rings[0]?.[0] ?? 0, post.rings.at(-1)?.[0] ?? 0];
  const [axis] = post.core.corners as readonly [PlanPoint];
  if (post.core.corners.length === 1) {
    const round = { circle: { x: axis[0], y: axis[1], radius: widestMm(post) }, sides: [] };
    return slabGeometry(outlineOf(round), bottom, top);
  }
  return slabGeometry(counterClockwise(post.core.corners), bottom, top);
}

function counterClockwise(corners: readonly PlanPoint[]): PlanPoint[] {
  const x = corners.reduce((sum, corner) => sum + corner[0], 0) / corners.length;
  const y = corners.reduce((sum, corner) => sum + corner[1], 0) / corners.length;
  const turn = (corner: PlanPoint): number => Math.atan2(corner[1] - y, corner[0] - x);
  return [...corners].sort((a, b) => turn(a) - turn(b));
}
