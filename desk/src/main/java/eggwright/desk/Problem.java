package eggwright.desk;

/** Shown instead of a page: what happened, what was kept, what to do. */
public record Problem(String title, String happened, String doNext) {}
