package eggwright.stats.mixed;

import java.util.LinkedHashMap;
import java.util.Map;

/** The models of glmm_cases.csv, by case. */
final class PublishedModels {
    private PublishedModels() {}

    static Map<String, MixedModel> all() {
        var models = new LinkedHashMap<String, MixedModel>();
        models.put(
                "GM01",
                seeds().number("x1").number("x2").interaction().random("plate").model());
        models.put("GM04", seeds().number("x1").number("x2").random("plate").model());
        models.put("GM05", seeds().random("plate").model());
        models.put("GM07", cbpp().random("herd").model());
        models.put("GM10", cbpp().random("herd").random("obs").model());
        models.put(
                "GM11",
                grapes().random("block")
                        .random("block", "trt")
                        .random("block", "trt", "vine")
                        .random("obs")
                        .model());
        models.put("GM12", grapes().random("block", "trt").model());
        models.put(
                "GM13",
                Trials.of("glmm_hessianfly.csv", "y", "n")
                        .category("gen")
                        .random("block")
                        .model());
        models.put(
                "GM14",
                Trials.of("glmm_hessianfly.csv", "y", "n")
                        .random("gen")
                        .random("block")
                        .random("obs")
                        .model());
        models.put(
                "GM15",
                Trials.of("glmm_carrotfly.csv", "y", "n")
                        .category("trt")
                        .random("gen")
                        .random("gen", "trt")
                        .random("block")
                        .random("obs")
                        .model());
        models.put(
                "GM16",
                Trials.of("glmm_wheatley.csv", "damaged", "total")
                        .category("treatment")
                        .random("rep")
                        .random("obs")
                        .model());
        models.put(
                "GM17",
                Trials.of("glmm_mead.csv", "germ", "seeds")
                        .category("temp")
                        .category("conc")
                        .random("obs")
                        .model());
        models.put(
                "GM19",
                Trials.of("betabin_dja.csv", "y", "n")
                        .category("group")
                        .random("village")
                        .random("herd")
                        .model());
        models.put("GM20", small().random("pen").random("week").random("obs").model());
        models.put("GM21", fertility());
        return models;
    }

    static MixedModel seedsWithInteraction() {
        return seeds().number("x1").number("x2").interaction().random("plate").model();
    }

    static MixedModel fertility() {
        return small().random("pen").random("week").model();
    }

    static MixedModel seedsAlone() {
        return seeds().random("plate").model();
    }

    static MixedModel herds() {
        return cbpp().random("herd").model();
    }

    static MixedModel salamanders() {
        return Trials.of("glmm_salamander.csv", "mate", "")
                .category("cross")
                .random("female")
                .random("male")
                .model();
    }

    private static Trials seeds() {
        return Trials.of("glmm_seeds.csv", "r", "n");
    }

    private static Trials cbpp() {
        return Trials.of("glmm_cbpp.csv", "incidence", "size").category("period");
    }

    private static Trials grapes() {
        return Trials.of("glmm_grapes.csv", "diseased", "total").category("trt");
    }

    private static Trials small() {
        return Trials.of("sim_small.csv", "fertile", "eggs")
                .number("storage_days")
                .category("machine");
    }
}
