import fc from 'fast-check';

/** One seed for every law: a failure can be had again. Another is tried with LAW_SEED=number. */
fc.configureGlobal({ seed: Number(process.env.LAW_SEED ?? 20261125) });
