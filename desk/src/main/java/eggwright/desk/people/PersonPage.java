package eggwright.desk.people;

import eggwright.desk.form.Form;

/** One buyer, to be added, changed or erased. */
public record PersonPage(String title, String intro, Form form) {}
