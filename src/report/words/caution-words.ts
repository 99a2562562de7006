/** The cautions in one line, for every page that can lead to contact or fatigue. */
export const CAUTION_LINE =
  'Contact limits and heat: your state association decides. Concussion and injury: licensed athletic trainers decide. Tackle and block within the rules; a free rusher sees what he hits, head up. If we didn’t practice it, we don’t call it.';

/** The cautions in full. */
export const CAUTIONS: readonly string[] = [
  'This page is guidance from few snaps. It supports the staff’s judgment and never replaces it.',
  'Contact limits and heat rules belong to your state association. Any question about a concussion, an injury or a player’s health belongs to licensed athletic trainers. Follow them wherever this page says otherwise or says nothing.',
  'Teach a free rusher to gather, keep his head up and see what he hits: no helmet contact, nothing below the knee. Work peel and cut drills on bags. Nobody rushes a scout passer live.',
  'If we didn’t practice it, we don’t call it.',
  'The program needs no player names and stores none. Keep them out of notes and call names.',
];
