import type { World } from './world.ts';

/** From so many notes on, memory matters more than the last per cent of speed. */
const MANY = 5000;

/** Keeps the memory of a run over very many notes level. */
export function spareMemory(notes: readonly unknown[], world: World): void {
  if (notes.length >= MANY) world.spareMemory?.();
}
