"""How the tables and columns of the book are called on the window, and their values shown."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.records import Record
from pedigreeview.book.row_images import table_columns

__all__ = ["about_words", "choice_words", "column_words", "record_name", "table_words"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("RecordWords", text)


def table_words() -> dict[str, str]:
    """The name of every table, in the order in which the work runs."""
    return {
        "plants": _tr("Plants"),
        "crosses": _tr("Crosses"),
        "pollinations": _tr("Pollinations"),
        "harvests": _tr("Harvests"),
        "packets": _tr("Seed packets"),
        "sowings": _tr("Sowings"),
        "traits": _tr("Traits"),
        "scores": _tr("Scores"),
        "loci": _tr("Genes"),
        "genotypes": _tr("Known genotypes"),
        "pollen_candidates": _tr("Candidates for the pollen"),
        "evidence": _tr("Evidence on parents"),
        "parent_findings": _tr("Findings on single plants"),
        "pollen_lots": _tr("Pollen kept"),
        "blooms": _tr("Times of flowering"),
        "compatibility": _tr("Who sets with whom"),
        "notes": _tr("Notes"),
        "photos": _tr("Photos"),
        "bookmarks": _tr("Bookmarks"),
        "accepted_checks": _tr("Checks called right"),
    }


def column_words() -> dict[str, str]:
    """The name of every column; the same word for the same thing in every table."""
    return {
        "plant": _tr("plant"),
        "name": _tr("name"),
        "kind": _tr("kind"),
        "raised": _tr("how it arose"),
        "cross": _tr("cross"),
        "source": _tr("source"),
        "selfings": _tr("selfings not recorded"),
        "fixation": _tr("fixation"),
        "crop": _tr("crop"),
        "ploidy": _tr("ploidy"),
        "sown": _tr("sown"),
        "status": _tr("status"),
        "place": _tr("place"),
        "obtained_from": _tr("obtained from"),
        "protected": _tr("protected"),
        "note": _tr("note"),
        "seed_parent": _tr("seed parent"),
        "pollen_parent": _tr("pollen parent"),
        "drawn": _tr("one pollen parent or many"),
        "intended": _tr("intended"),
        "direction_known": _tr("direction known"),
        "made_on": _tr("made on"),
        "seed_doubt": _tr("seed parent is"),
        "pollen_doubt": _tr("pollen parent is"),
        "state": _tr("state"),
        "candidate": _tr("candidate"),
        "odds": _tr("odds"),
        "side": _tr("side"),
        "for_or_against": _tr("for or against"),
        "date": _tr("date"),
        "text": _tr("text"),
        "grade": _tr("grade"),
        "pollination": _tr("pollination"),
        "flowers": _tr("flowers"),
        "emasculated_on": _tr("emasculated on"),
        "pollen_lot": _tr("pollen kept"),
        "cover": _tr("cover"),
        "tag": _tr("tag"),
        "by": _tr("by"),
        "bud": _tr("bud"),
        "set": _tr("set"),
        "dropped": _tr("dropped"),
        "harvest": _tr("harvest"),
        "fruits": _tr("fruits"),
        "seeds": _tr("seeds"),
        "packet": _tr("packet"),
        "generation": _tr("generation of the seed"),
        "borne_on": _tr("borne on"),
        "covered": _tr("covered"),
        "left": _tr("left"),
        "germination": _tr("germination"),
        "sowing": _tr("sowing"),
        "sown_from": _tr("sown from"),
        "up": _tr("came up"),
        "kept": _tr("kept"),
        "trait": _tr("trait"),
        "type": _tr("type"),
        "unit": _tr("unit"),
        "low": _tr("lowest"),
        "high": _tr("highest"),
        "better": _tr("better"),
        "values": _tr("values"),
        "of": _tr("of"),
        "value": _tr("value"),
        "locus": _tr("gene"),
        "alleles": _tr("alleles"),
        "dominance": _tr("dominance"),
        "phenotypes": _tr("what it shows"),
        "chromosome": _tr("chromosome"),
        "position_cM": _tr("place in cM"),
        "genotype": _tr("genotype"),
        "known_by": _tr("known by"),
        "collected": _tr("collected"),
        "stored": _tr("stored"),
        "first_flower": _tr("first flower"),
        "last_flower": _tr("last flower"),
        "partner": _tr("partner"),
        "as_seed": _tr("as seed parent"),
        "as_pollen": _tr("as pollen parent"),
        "about": _tr("about"),
        "focus": _tr("focus"),
        "pinned": _tr("pinned"),
        "keys": _tr("about"),
        "why": _tr("why"),
        "photo": _tr("file"),
        "caption": _tr("caption"),
    }


def choice_words() -> dict[str, str]:
    """The words that stand in records, as a person reads them."""
    return {
        "variety": _tr("variety"),
        "plant": _tr("plant"),
        "family": _tr("family"),
        "founder": _tr("founder"),
        "cross": _tr("cross"),
        "seed_of": _tr("seed of"),
        "sibbed_in": _tr("sibs mated in"),
        "cutting_of": _tr("cutting of"),
        "doubled_haploid_of": _tr("doubled haploid of"),
        "doubled_of": _tr("doubled form of"),
        "growing": _tr("growing"),
        "kept": _tr("kept"),
        "culled": _tr("culled"),
        "lost": _tr("lost"),
        "finished": _tr("finished"),
        "certain": _tr("certain"),
        "probable": _tr("probable"),
        "possible": _tr("possible"),
        "unknown": _tr("unknown"),
        "one": _tr("one"),
        "each": _tr("each seed its own"),
        "selfing": _tr("selfing"),
        "open": _tr("open"),
        "planned": _tr("planned"),
        "made": _tr("made"),
        "skipped": _tr("skipped"),
        "seed": _tr("seed"),
        "pollen": _tr("pollen"),
        "for": _tr("for"),
        "against": _tr("against"),
        "closed": _tr("closed"),
        "unsure": _tr("unsure"),
        "score": _tr("score"),
        "measure": _tr("measure"),
        "category": _tr("category"),
        "yes_no": _tr("yes or no"),
        "high": _tr("high"),
        "low": _tr("low"),
        "none": _tr("none"),
        "fertile": _tr("fertile"),
        "poor": _tr("poor"),
        "sterile": _tr("sterile"),
    }


def record_name(record: Record) -> str:
    """What a record is called in a sentence: its key, or what it is about."""
    if record.KEY:
        return " ".join(str(getattr(record, name)) for name in record.KEY)
    first = [column for column in table_columns(record.TABLE) if column.required]
    return " ".join(str(getattr(record, column.name)) for column in first)


def about_words(record: Record) -> str:
    """'plant 23-07', 'score of 23-07 height': for the menu and for sentences."""
    kinds = {
        "plants": _tr("plant {}"),
        "crosses": _tr("cross {}"),
        "pollinations": _tr("pollination {}"),
        "harvests": _tr("harvest {}"),
        "packets": _tr("packet {}"),
        "sowings": _tr("sowing {}"),
        "traits": _tr("trait {}"),
        "scores": _tr("score of {}"),
        "loci": _tr("gene {}"),
        "genotypes": _tr("genotype of {}"),
        "pollen_candidates": _tr("candidate of {}"),
        "evidence": _tr("evidence on {}"),
        "parent_findings": _tr("finding on {}"),
        "pollen_lots": _tr("pollen {}"),
        "blooms": _tr("flowering of {}"),
        "compatibility": _tr("compatibility of {}"),
        "notes": _tr("note on {}"),
        "photos": _tr("photo {}"),
        "bookmarks": _tr("bookmark {}"),
        "accepted_checks": _tr("mark on {}"),
    }
    return kinds[record.TABLE].format(record_name(record))
