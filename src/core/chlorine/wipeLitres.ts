/** Litres made with the soak for wiping, where the unit has not said how many (an estimate). */
export const WIPE_LITRES = 0.5;
