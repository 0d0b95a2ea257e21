/**
 * The cover over the silence button, so that silencing takes two deliberate steps (14 CFR 25.729(e)(4)): lifted, it
 * falls shut by itself. It is no part of the aeroplane's state: only the press beneath it is an act.
 */

/** How long a lifted cover stays up, ms. */
export const COVER_MS = 6000;

/** Stamp at which the cover was lifted; null while it is shut. */
export type Cover = number | null;

export const coverIsOpen = (cover: Cover, stampMs: number): boolean => cover !== null && stampMs - cover < COVER_MS;

/** A hand on the cover: up when it is shut, shut when it is up. */
export const moveCover = (cover: Cover, stampMs: number): Cover => (coverIsOpen(cover, stampMs) ? null : stampMs);
