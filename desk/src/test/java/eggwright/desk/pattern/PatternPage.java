package eggwright.desk.pattern;

import eggwright.desk.form.Form;
import eggwright.desk.part.CautionShown;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.part.RateShown;
import eggwright.desk.picture.Picture;
import java.util.List;

/** Every piece of the desk on one page. */
public record PatternPage(
        List<NoticeShown> notices, CautionShown caution, RateShown rate, List<Picture> pictures, Form form) {}
