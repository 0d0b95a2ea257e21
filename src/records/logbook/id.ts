/** 128 random bits as text: randomUUID is absent over plain http on a network. */
export const newId = (): string => [...crypto.getRandomValues(new Uint32Array(4))].map((word) => word.toString(16).padStart(8, '0')).join('');
