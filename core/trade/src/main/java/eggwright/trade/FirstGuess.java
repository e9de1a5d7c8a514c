package eggwright.trade;

import eggwright.trade.source.Sourced;

/**
 * The losses that a farm without history of its own starts from: shares from 0 to 1.
 *
 * <p>Most were published for pheasant, chukar or chicken; for other species the source says from which they were taken.
 *
 * @param infertileOfSet infertile, as a share of eggs set
 * @param earlyDeadOfFertile early dead, as a share of fertile eggs (blood rings inside)
 * @param midDeadOfFertile mid dead, as a share of fertile eggs
 * @param lateDeadOfFertile late dead, not pipped, as a share of fertile eggs (malformed and malpositioned inside)
 * @param pippedDeadOfFertile pipped and dead, as a share of fertile eggs
 * @param contaminatedOfSet contaminated or rotten, as a share of eggs set
 * @param crackedOfSet cracked in the machine, as a share of eggs set
 * @param culledOfHatched culled, as a share of chicks hatched
 * @param deadInBasketOfHatched dead in the basket, as a share of chicks hatched
 */
public record FirstGuess(
        Sourced<Double> infertileOfSet,
        Sourced<Double> earlyDeadOfFertile,
        Sourced<Double> midDeadOfFertile,
        Sourced<Double> lateDeadOfFertile,
        Sourced<Double> pippedDeadOfFertile,
        Sourced<Double> contaminatedOfSet,
        Sourced<Double> crackedOfSet,
        Sourced<Double> culledOfHatched,
        Sourced<Double> deadInBasketOfHatched) {}
