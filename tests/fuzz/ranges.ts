/** Numbers of a value with the ranges that its schema gives them, and places in such a range: the ends more often than chance would. */
import fc from 'fast-check';
import type { Shape } from '../../sim/files/index.js';
import { anywhere } from '../draw.js';

/** Paths of all numbers of a value, each with its range from the schema. */
export function ranges(value: unknown, shape: Shape, path: (string | number)[] = []): { path: (string | number)[]; min: number; max: number; whole: boolean }[] {
  if (typeof value === 'number') return shape.kind === 'number' ? [{ path, min: shape.min, max: shape.max, whole: shape.whole }] : [];
  if (Array.isArray(value)) return shape.kind === 'list' ? value.flatMap((item, at) => ranges(item, shape.item, [...path, at])) : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const next = shape.kind === 'object' ? shape.keys.get(key)?.shape : undefined;
    return next === undefined ? [] : ranges(inner, next, [...path, key]);
  });
}

export const inRange = fc.oneof(fc.constant(0), fc.constant(1), anywhere(0, 1), anywhere(0, 0.01));
/** A value at a part of its range, 0 to 1. */
export const between = ({ min, max, whole }: { min: number; max: number; whole: boolean }, part: number): number => {
  const value = Math.round((min + (max - min) * part) * 1e6) / 1e6;
  return whole ? Math.round(value) : Math.min(max, Math.max(min, value));
};
