package eggwright.book.fold;

import eggwright.book.name.SetName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.SetPicture;
import java.util.List;
import java.util.SortedMap;

/** One set, or several whose eggs were pooled, folded. The account is empty where no set of the group ever went in. */
record SetGroup(SortedMap<SetName, SetPicture> sets, EggAccount account, List<Discrepancy> discrepancies) {}
