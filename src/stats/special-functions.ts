/// <reference path="./cephes.d.ts" />
import { chdtrc, compiled, exp, incbet, incbi, lgam, log, ndtr, ndtri, psi } from 'cephes';

// The ES module build compiles its WebAssembly asynchronously. Waiting here, once, lets every function of this room
// stay synchronous: a module that imports this one is not run before the program is ready.
await compiled;

/** The special functions of Moshier's Cephes library, ready to be called. */
export const cephes = { chdtrc, exp, incbet, incbi, lgam, log, ndtr, ndtri, psi } as const;
