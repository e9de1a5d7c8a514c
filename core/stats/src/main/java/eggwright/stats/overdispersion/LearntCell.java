package eggwright.stats.overdispersion;

import eggwright.stats.predictive.ScatteredShare;

/**
 * One possibility for a farm's share.
 *
 * @param share mean over groups and scatter between them
 * @param weight how likely it is, 0 to 1; the cells of one learnt share sum to 1
 */
public record LearntCell(ScatteredShare share, double weight) {}
