<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Window</name>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>  {}: {} became {}</source>
        <translation>  {}: {} wurde zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source> % of the best thinkable</source>
        <translation> % des denkbar Besten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source> (not all records of the gene)</source>
        <translation> (nicht alle Aufzeichnungen zum Gen)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source> alleles or more</source>
        <translation> Allele oder mehr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source> and {} more</source>
        <translation> und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source> of {}</source>
        <translation> von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source> … and {} more</source>
        <translation> … und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>&amp;All plants of one cross</source>
        <translation>&amp;Alle Pflanzen einer Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Alleles, dominant first</source>
        <translation>&amp;Allele, das dominante zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/menus.py"/>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>&amp;Back up now</source>
        <translation>Jetzt &amp;sichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Backups …</source>
        <translation>&amp;Sicherungen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Better is</source>
        <translation>Besser &amp;ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>&amp;Bring it into the book …</source>
        <translation>Ins &amp;Buch einlesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>&amp;Browse …</source>
        <translation>&amp;Durchsuchen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;By</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>&amp;Carries</source>
        <translation>&amp;Trägt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Cautions</source>
        <translation>&amp;Warnhinweise</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Chromosome</source>
        <translation>C&amp;hromosom</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Close the book</source>
        <translation>Buch s&amp;chließen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;Code</source>
        <translation>&amp;Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>&amp;Coefficient</source>
        <translation>&amp;Koeffizient</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <source>&amp;Copy the report</source>
        <translation>Bericht &amp;kopieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Correct parents …</source>
        <translation>Eltern &amp;berichtigen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>&amp;Crop</source>
        <translation>&amp;Kulturart</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>&amp;Cross</source>
        <translation>&amp;Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Cross …</source>
        <translation>&amp;Kreuzung …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>&amp;Cull it instead</source>
        <translation>Stattdessen &amp;verwerfen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>&amp;Delete it</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Delete this plant …</source>
        <translation>Diese Pflanze &amp;löschen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Diversity of a group …</source>
        <translation>&amp;Vielfalt einer Gruppe …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>&amp;Double reduction of tetraploids, 0 to 1/6</source>
        <translation>&amp;Doppelreduktion bei Tetraploiden, 0 bis 1/6</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;Emasculated on</source>
        <translation>Kastri&amp;ert am</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>&amp;Ending</source>
        <translation>&amp;Endung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>&amp;Evidence</source>
        <translation>&amp;Beleg</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;First flower</source>
        <translation>&amp;Erste Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Fit the picture</source>
        <translation>Bild ein&amp;passen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;Flowers</source>
        <translation>&amp;Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>&amp;For</source>
        <translation>&amp;Für</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Forward</source>
        <translation>&amp;Vorwärts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <source>&amp;Founders that say nothing</source>
        <translation>&amp;Gründer ohne Angabe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Fruits</source>
        <translation>&amp;Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Fruits set and lost …</source>
        <translation>&amp;Früchte angesetzt, abgefallen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>&amp;Gene</source>
        <translation>&amp;Gen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Generation of the seed</source>
        <translation>&amp;Generation des Samens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>&amp;Go back to this one …</source>
        <translation>&amp;Zu dieser zurückkehren …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <source>&amp;Go on in the copy</source>
        <translation>In der Kopie &amp;weiterarbeiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>&amp;Grade</source>
        <translation>&amp;Stufe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Harvest …</source>
        <translation>&amp;Ernte …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>&amp;Headings</source>
        <translation>Übers&amp;chriften</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Highest</source>
        <translation>&amp;Höchster</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;History of this line …</source>
        <translation>&amp;Geschichte dieser Linie …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>&amp;How are these two connected</source>
        <translation>Wie &amp;hängen diese beiden zusammen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;How many</source>
        <translation>&amp;Wie viele</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>&amp;How sure</source>
        <translation>Wie &amp;sicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Index</source>
        <translation>&amp;Index</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;Is</source>
        <translation>&amp;Ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>&amp;Keep all apart</source>
        <translation>Alle &amp;getrennt lassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>&amp;Keep the words</source>
        <translation>&amp;Text speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Kept</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;Kept as</source>
        <translation>Geführt &amp;als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>&amp;Kept in</source>
        <translation>Gespeichert &amp;in</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Kept, culled or lost …</source>
        <translation>Behalten, ver&amp;worfen, verloren …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Known by</source>
        <translation>&amp;Bekannt durch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>&amp;Labels on</source>
        <translation>Etiketten &amp;auf</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Last flower</source>
        <translation>&amp;Letzte Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Light or dark</source>
        <translation>Hell &amp;oder dunkel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/quick.py"/>
        <source>&amp;Line</source>
        <translation>&amp;Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Lowest</source>
        <translation>&amp;Niedrigster</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>&amp;Make again</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>&amp;Measures of the stock</source>
        <translation>&amp;Maße des Bogens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>&amp;Mine for all</source>
        <translation>&amp;Meine für alle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>&amp;Misread</source>
        <translation>&amp;Falsch erkannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Mixed pollen</source>
        <translation>&amp;Mischpollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;More: pollen kept, notes</source>
        <translation>&amp;Mehr: aufbewahrter Pollen, Notizen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>&amp;Move its progeny to another cross, then delete it</source>
        <translation>Nachkommen in andere Kreuzung &amp;verschieben, dann löschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>&amp;Multiplication signs, the seed parent first</source>
        <translation>&amp;Malzeichen, der Samenelter zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>&amp;Name of the book</source>
        <translation>&amp;Name des Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <source>&amp;Name of the new book</source>
        <translation>&amp;Name des neuen Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>&amp;Names in place of codes, where a plant has one</source>
        <translation>&amp;Namen statt Codes, wo eine Pflanze einen hat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Nearer</source>
        <translation>&amp;Näher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;New book …</source>
        <translation>&amp;Neues Buch …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>&amp;No, or not always: keep the direction open</source>
        <translation>&amp;Nein, oder nicht immer: Richtung offenlassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Note …</source>
        <translation>&amp;Notiz …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Of</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>&amp;Off-types put up with</source>
        <translation>&amp;Geduldete Abweicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Open a book or table …</source>
        <translation>Buch oder Tabelle &amp;öffnen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>&amp;Open it</source>
        <translation>&amp;Öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>&amp;Open the new book</source>
        <translation>Neues Buch &amp;öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>&amp;Outcrossing of open-pollinated seed, 0 to 1</source>
        <translation>&amp;Fremdbefruchtung bei frei abgeblühtem Samen, 0 bis 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Packet</source>
        <translation>&amp;Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>&amp;Parent</source>
        <translation>&amp;Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Place in cM</source>
        <translation>&amp;Position in cM</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Plant</source>
        <translation>&amp;Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>&amp;Plants</source>
        <translation>&amp;Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>&amp;Ploidy</source>
        <translation>&amp;Ploidie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;Pollen kept, if any</source>
        <translation>A&amp;ufbewahrter Pollen, falls verwendet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>&amp;Pollen parent ♂</source>
        <translation>&amp;Pollenelter ♂</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;Pollination</source>
        <translation>&amp;Bestäubung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Pollination …</source>
        <translation>&amp;Bestäubung …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Print the picture …</source>
        <translation>Bild &amp;drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Quick line …</source>
        <translation>S&amp;chnellzeile …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>&amp;Ratio</source>
        <translation>&amp;Spaltungsverhältnis</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/preview_panel.py"/>
        <source>&amp;Read the file again</source>
        <translation>Datei &amp;neu lesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Redo: {}</source>
        <translation>&amp;Wiederherstellen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>&amp;Remove from the book</source>
        <translation>Aus dem Buch &amp;entfernen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>&amp;Replace it</source>
        <translation>E&amp;rsetzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>&amp;Rescue</source>
        <translation>&amp;Retten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <source>&amp;Save the report …</source>
        <translation>Bericht &amp;speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>&amp;Season</source>
        <translation>&amp;Saison</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Seed parent ♀</source>
        <translation>&amp;Samenelter ♀</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Seeds</source>
        <translation>S&amp;amen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>&amp;Sheet</source>
        <translation>&amp;Blatt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Sideways</source>
        <translation>&amp;Quer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Signs and keys</source>
        <translation>&amp;Zeichen und Tasten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>&amp;Skip it instead</source>
        <translation>Stattdessen &amp;auslassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>&amp;Slashes, as cereal breeders write: the seed parent left</source>
        <translation>&amp;Schrägstriche, wie Getreidezüchter schreiben: der Samenelter links</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Sowing …</source>
        <translation>&amp;Aussaat …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;Sowing, if recorded</source>
        <translation>Aus&amp;saat, falls aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;Sown</source>
        <translation>Ge&amp;sät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>&amp;Tag</source>
        <translation>&amp;Etikett</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Text</source>
        <translation>&amp;Text</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>&amp;Theirs for all</source>
        <translation>&amp;Fremde für alle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>&amp;Tint and filter</source>
        <translation>&amp;Tönung und Filter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>&amp;Trait</source>
        <translation>&amp;Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>&amp;Traits</source>
        <translation>&amp;Merkmale</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Type</source>
        <translation>&amp;Typ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>&amp;Undo this step</source>
        <translation>Diesen Schritt &amp;rückgängig machen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>&amp;Undo to here</source>
        <translation>&amp;Rückgängig bis hier</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>&amp;Undo to here: {} steps</source>
        <translation>&amp;Rückgängig bis hier: {} Schritte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Undo: {}</source>
        <translation>&amp;Rückgängig: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Unit</source>
        <translation>&amp;Einheit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;Values</source>
        <translation>&amp;Werte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>&amp;Variety from elsewhere …</source>
        <translation>S&amp;orte von außerhalb …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>&amp;Way</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>&amp;What to print</source>
        <translation>&amp;Was gedruckt wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;What was done …</source>
        <translation>W&amp;as getan wurde …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Whole book</source>
        <translation>&amp;Ganzes Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>&amp;With, or blank for any</source>
        <translation>&amp;Mit (leer: beliebig)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Words</source>
        <translation>&amp;Begriffe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>&amp;Write</source>
        <translation>&amp;Schreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>&amp;Yes, go back to it</source>
        <translation>&amp;Ja, dahin zurückkehren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>&amp;Yes, the seed parent stands first in every cell</source>
        <translation>&amp;Ja, in jeder Zelle steht der Samenelter zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>&amp;day, month, year</source>
        <translation>&amp;Tag, Monat, Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>&amp;month, day, year</source>
        <translation>&amp;Monat, Tag, Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>'{}' does not fit the column '{}'.</source>
        <translation>„{}“ passt nicht in die Spalte „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <source>'{}' is no number.</source>
        <translation>„{}“ ist keine Zahl.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>'{}' is no ratio.</source>
        <translation>„{}“ ist kein Spaltungsverhältnis.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>'{}' is no share from 0 to 1.</source>
        <translation>„{}“ ist kein Anteil von 0 bis 1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <source>'{}' is no whole number.</source>
        <translation>„{}“ ist keine ganze Zahl.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>(blank)</source>
        <translation>(leer)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>(its own flowers)</source>
        <translation>(eigene Blüten)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>(which bore the seed is not known)</source>
        <translation>(welche den Samen trug, ist unbekannt)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>+ note</source>
        <translation>+ Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>+ photo …</source>
        <translation>+ Foto …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>+ {}</source>
        <translation>+ {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>0 to 100%</source>
        <translation>0 bis 100%</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>0: its two alleles count as unrelated</source>
        <translation>0: Die beiden Allele gelten als nicht verwandt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>1 less the F that their progeny would have.</source>
        <translation>1 minus dem F, das die Nachkommen hätten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>1 pair</source>
        <translation>1 Paar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>1 plant is</source>
        <translation>1 Pflanze ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>1 plant that does not fit is folded away.</source>
        <translation>1 unpassende Pflanze ist eingeklappt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>1 pollination lacks its flowers or its fruits and is left out.</source>
        <translation>Bei 1 Bestäubung fehlen die Blüten oder die Früchte; sie ist ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>1: breeds true</source>
        <translation>1: reinerbig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>3/5 is the 3rd of May: day, then month</source>
        <translation>3/5 ist der 3. Mai: erst Tag, dann Monat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>3/5 is the 5th of March: month, then day</source>
        <translation>3/5 ist der 5. März: erst Monat, dann Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>95% interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>; and {} more</source>
        <translation>; und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>; that is foreign pollen or a volunteer, not segregation</source>
        <translation>; das ist Fremdpollen oder Durchwuchs, keine Aufspaltung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>A &amp;founder that does not say counts as</source>
        <translation>Ein &amp;Gründer ohne Angabe zählt als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>A .pedbook, or CSV, TSV or text from a spreadsheet</source>
        <translation>Ein .pedbook, oder CSV, TSV oder Text aus einer Tabellenkalkulation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>A Data Package folder with datapackage.json</source>
        <translation>Ein Data-Package-Ordner mit datapackage.json</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>A Data Package: every table as CSV, with photos, readable without us.</source>
        <translation>Ein Data Package: jede Tabelle als CSV, mit Fotos, auch ohne dieses Programm lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>A PDF file, to print elsewhere</source>
        <translation>Eine PDF-Datei, um anderswo zu drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>A backup is made when the book is opened and has changed since the last one. The last {} and the newest of each month are kept, in {}.</source>
        <translation>Eine Sicherung entsteht beim Öffnen, wenn sich das Buch seit der letzten geändert hat. Die letzten {} und die neueste jedes Monats bleiben erhalten, in {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>A blade cuts and carries virus: clean it between plants.</source>
        <translation>Eine Klinge schneidet und überträgt Viren: zwischen den Pflanzen reinigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>A blank</source>
        <translation>Ein leeres Feld</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>A bookmark keeps the plant in focus and the pins, in the book itself.</source>
        <translation>Ein Lesezeichen bewahrt die Pflanze im Fokus und die Nadeln, im Buch selbst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>A bud that was not surely closed may have selfed: odds of {} are proposed.</source>
        <translation>Eine nicht sicher geschlossene Knospe kann sich geselbstet haben: Vorgeschlagen ist eine Wahrscheinlichkeit von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>A copy of the book in one file.</source>
        <translation>Eine Kopie des Buches in einer Datei.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>A cutting of {}: the same plant in another pot.</source>
        <translation>Ein Steckling von {}: dieselbe Pflanze in einem anderen Topf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>A dated note keeps that it was {}.</source>
        <translation>Eine datierte Notiz hält fest, dass es {} war.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>A dated note of each plant keeps where it came from.</source>
        <translation>Eine datierte Notiz an jeder Pflanze hält fest, woher sie kam.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>A doubled haploid of {}: fixed in one step.</source>
        <translation>Eine Doppelhaploide von {}: in einem Schritt fixiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>A founder has no history: nothing is recorded before it.</source>
        <translation>Ein Gründer hat keine Geschichte: vor ihm ist nichts aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>A gene</source>
        <translation>Ein Gen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>A hybrid crossed with one of its own parents, the recurrent one.</source>
        <translation>Eine Hybride, gekreuzt mit einem ihrer Eltern, dem rekurrenten Elter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>A line is judged by its plants: two or more raised from one selfed plant, from a family or from the seed of a variety, and scored.</source>
        <translation>Eine Linie wird nach ihren Pflanzen beurteilt: zwei oder mehr, herangezogen aus einer geselbsteten Pflanze, aus einer Familie oder aus dem Samen einer Sorte, und bonitiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>A newcomer's table</source>
        <translation>Die Tabelle eines Neulings</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>A pair appears here by itself when two parents have been crossed both ways: once with one of them as the seed parent, once with the other.</source>
        <translation>Ein Paar erscheint hier von selbst, wenn zwei Eltern in beiden Richtungen gekreuzt sind: einmal mit dem einen als Samenelter, einmal mit dem anderen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>A pair by plant: the same two plants, crossed both ways.</source>
        <translation>Paar nach Pflanzen: dieselben zwei Pflanzen, in beiden Richtungen gekreuzt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>A pair by variety: plants grown from these two varieties, crossed both ways.</source>
        <translation>Paar nach Sorten: Pflanzen aus diesen zwei Sorten, in beiden Richtungen gekreuzt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>A plain table as a spreadsheet has it: one row a plant, and no word yet about how the founders are kept true.</source>
        <translation>Eine schlichte Tabelle, wie sie aus einer Tabellenkalkulation kommt: je Pflanze eine Zeile, und noch kein Wort darüber, wie die Gründer sortenecht gehalten werden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>A plant or variety with nothing recorded before it.</source>
        <translation>Eine Pflanze oder Sorte, vor der nichts aufgezeichnet ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>A pollinated flower becomes a fruit. Take rate: fruits by flowers.</source>
        <translation>Aus einer bestäubten Blüte wird eine Frucht. Ansatzrate: Früchte je Blüte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>A score of seed speaks of a seed of the plant, one generation ahead; uncertain pollen parents count with their odds.</source>
        <translation>Eine Bonitur am Samen gilt für einen Samen der Pflanze, eine Generation weiter; unsichere Pollenelter zählen mit ihrer Wahrscheinlichkeit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>A share lies from 0 to 1, so this one says nothing.</source>
        <translation>Ein Anteil liegt zwischen 0 und 1; dieser sagt also nichts.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>A trait</source>
        <translation>Ein Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>A variety may be protected. Breeding with it and private use are often free, but patents and the licence on the packet may say otherwise.</source>
        <translation>Eine Sorte kann geschützt sein. Züchtung damit und privater Gebrauch sind oft frei; Patente und die Lizenz auf der Samentüte können anderes sagen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>A&amp;ll bookmarks …</source>
        <translation>A&amp;lle Lesezeichen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>About &amp;plant</source>
        <translation>Zu &amp;Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>About {} plants would tell, in four trials of five.</source>
        <translation>Etwa {} Pflanzen würden es in vier von fünf Versuchen zeigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>About: {}</source>
        <translation>Betrifft: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Add a name</source>
        <translation>Namen hinzufügen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>Add a wish for a trait whose gene is in the book, or say the genes in numbers instead.</source>
        <translation>Einen Wunsch für ein Merkmal hinzufügen, dessen Gen im Buch steht, oder die Gene in Zahlen angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>Add photos of {} from files; one can also be dropped here or pasted</source>
        <translation>Fotos von {} aus Dateien hinzufügen; auch Ablegen und Einfügen geht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>Add this wish</source>
        <translation>Wunsch hinzufügen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Add: {}</source>
        <translation>Hinzufügen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Additive genes of one measured trait</source>
        <translation>Additive Gene eines gemessenen Merkmals</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/preview_panel.py"/>
        <source>After you have mended it in the spreadsheet program</source>
        <translation>Nach dem Berichtigen in der Tabellenkalkulation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Against {}</source>
        <translation>Gegen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>All bookmarks …</source>
        <translation>Alle Lesezeichen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <location filename="../../pedigreeview/window/door.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>All founders</source>
        <translation>Alle Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>All kinds: {}</source>
        <translation>Alle Arten: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>All living plants</source>
        <translation>Alle lebenden Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>All look alike, so nothing segregates here.</source>
        <translation>Alle sehen gleich aus; hier spaltet also nichts auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <source>All plants</source>
        <translation>Alle Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>All plants and crosses of the book, with their parents' roles.</source>
        <translation>Alle Pflanzen und Kreuzungen des Buchs mit den Rollen ihrer Eltern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>All plants kept</source>
        <translation>Alle behaltenen Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>All plants of the cross</source>
        <translation>Alle Pflanzen der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>All squares at once (0)</source>
        <translation>Alle Felder auf einmal (0)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>All work</source>
        <translation>Alle Arbeiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>All {} together: {} of {} families</source>
        <translation>Alle {} zusammen: {} von {} Familien</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Allele</source>
        <translation>Allel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Already written down for {}</source>
        <translation>Schon aufgezeichnet für {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Alt+Left, Alt+Right</source>
        <translation>Alt+Links, Alt+Rechts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>An empty book to write crosses and plants in</source>
        <translation>Ein leeres Buch, um Kreuzungen und Pflanzen einzutragen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>An off-type is a plant unlike its row in a trait with words.</source>
        <translation>Ein Abweicher ist eine Pflanze, die in einem mit Worten bonitierten Merkmal anders ist als ihre Reihe.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>And {} groups more.</source>
        <translation>Und {} weitere Gruppen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Another finding …</source>
        <translation>Weiterer Befund …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>Another window has written in this book; it is shown.</source>
        <translation>Ein anderes Fenster hat in dieses Buch geschrieben; es wird gezeigt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Arrow keys go from tag to tag. A planned cross is dragged to Pollinated once it is made (Ctrl+Right), or to the end to skip it (Delete).</source>
        <translation>Die Pfeiltasten gehen von Etikett zu Etikett. Eine geplante Kreuzung wird zu Bestäubt gezogen, sobald sie gemacht ist (Strg+Rechts), oder ans Ende, um sie auszulassen (Entf).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/heat_map.py"/>
        <source>Arrow keys move from pair to pair; Enter explains the pair.</source>
        <translation>Die Pfeiltasten gehen von Paar zu Paar; Eingabe erklärt das Paar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>As &amp;seed parent</source>
        <translation>Als &amp;Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>As founder equivalents, but bottlenecks on the way count too.</source>
        <translation>Wie Gründeräquivalente, aber auch Engpässe unterwegs zählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>As p&amp;ollen parent</source>
        <translation>Als P&amp;ollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>As pollen parents</source>
        <translation>Als Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>As seed or pollen parents</source>
        <translation>Als Samen- oder Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>As seed parents</source>
        <translation>Als Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>Ask about fewer genes, or take them as unlinked.</source>
        <translation>Nach weniger Genen fragen oder sie als ungekoppelt annehmen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/curve.py"/>
        <source>At {:,}: {}.</source>
        <translation>Bei {:,}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <source>Back (Alt+Left)</source>
        <translation>Zurück (Alt+Links)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Back at all genes asked</source>
        <translation>Zurück an allen gefragten Genen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Back to the generations up and down</source>
        <translation>Zurück zu den Generationen aufwärts und abwärts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Backcross</source>
        <translation>Rückkreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Backcross to</source>
        <translation>Rückkreuzen mit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Backcrossed</source>
        <translation>Rückgekreuzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Backcrosses</source>
        <translation>Rückkreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>Backups of {}</source>
        <translation>Sicherungen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>Backups, the newest first</source>
        <translation>Sicherungen, die neueste zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>Base</source>
        <translation>Basis</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Base of the numbers</source>
        <translation>Basis der Zahlen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Bayes' rule; the chances before are a choice of ours, no source</source>
        <translation>Satz von Bayes; die Wahrscheinlichkeiten vorab sind unsere Wahl, ohne Quelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Bears the fruit and the seed. Written first, on the left.</source>
        <translation>Trägt die Frucht und den Samen. Steht zuerst, links.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Becomes</source>
        <translation>Wird zu</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>Bed / row / position, such as 'Bed 2 / row 3 / 7'</source>
        <translation>Beet / Reihe / Position, etwa „Beet 2 / Reihe 3 / 7“</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Bed 2 / row 3</source>
        <translation>Beet 2 / Reihe 3</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Bed 2 / row 3 / 7</source>
        <translation>Beet 2 / Reihe 3 / 7</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Beds</source>
        <translation>Beete</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>Beds and rows</source>
        <translation>Beete und Reihen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Before anything was seen: {}% by how the buds were when worked.</source>
        <translation>Bevor etwas zu sehen war: {}%, je nach Zustand der Knospen beim Bestäuben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Begin with label &amp;number</source>
        <translation>Beginnen mit Etikett &amp;Nr.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Begin with label number</source>
        <translation>Beginnen mit Etikett Nr.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Believe the genotypes that are written down</source>
        <translation>Aufgeschriebenen Genotypen vertrauen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Blades</source>
        <translation>Klingen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Blank sheet: fruits set</source>
        <translation>Leeres Blatt: Fruchtansatz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Blank sheet: pollinations</source>
        <translation>Leeres Blatt: Bestäubungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Blank sheet: rows sown</source>
        <translation>Leeres Blatt: gesäte Reihen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Blank sheet: scores</source>
        <translation>Leeres Blatt: Bonituren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Book s&amp;ettings …</source>
        <translation>Buch&amp;einstellungen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>Book settings</source>
        <translation>Bucheinstellungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>Book&amp;mark this place …</source>
        <translation>Lesezeichen hier set&amp;zen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>Bookmark this place …</source>
        <translation>Lesezeichen hier setzen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>Bookmark {}</source>
        <translation>Lesezeichen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>Bookmark {} removed</source>
        <translation>Lesezeichen {} entfernt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>Bookmark {} renamed</source>
        <translation>Lesezeichen {} umbenannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>Bookmark: {}</source>
        <translation>Lesezeichen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Bookmarks</source>
        <translation>Lesezeichen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>Bookmarks of the book</source>
        <translation>Lesezeichen des Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Books ({})</source>
        <translation>Bücher ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Both directions have the same coancestry; they differ in cytoplasm, seed coat and early vigour.</source>
        <translation>Beide Richtungen haben dieselbe Verwandtschaft θ; sie unterscheiden sich in Zytoplasma, Samenschale und Jugendwuchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Both directions of a cross compared</source>
        <translation>Beide Richtungen einer Kreuzung im Vergleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>Both parents stand in one cell. Without knowing which comes first, the direction of these crosses stays open, and no cytoplasm is followed through them.</source>
        <translation>Beide Eltern stehen in einer Zelle. Ohne zu wissen, welcher zuerst kommt, bleibt die Richtung dieser Kreuzungen offen, und kein Zytoplasma wird durch sie verfolgt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Bound {:.4f}, gap {:.4f}: the search ended before it was proved.</source>
        <translation>Schranke {:.4f}, Lücke {:.4f}: Die Suche endete vor dem Beweis.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Bound: Clopper and Pearson, one-sided. Plants to look at: ln 0.05 / ln(1 − share).</source>
        <translation>Schranke: Clopper und Pearson, einseitig. Zu prüfende Pflanzen: ln 0,05 / ln(1 − Anteil).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Breeding API, JSON</source>
        <translation>Breeding API, JSON</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Breeding value: what a plant is expected to pass on, as a difference from {}; half of it shows in the mean of its progeny by a mate of value 0, all of it in its selfed progeny. Reliability 0: nothing is known beyond the mean.</source>
        <translation>Zuchtwert: was eine Pflanze voraussichtlich vererbt, als Abweichung von {}; die Hälfte davon zeigt sich im Mittel ihrer Nachkommen mit einem Partner vom Wert 0, alles davon in ihren geselbsteten Nachkommen. Zuverlässigkeit 0: Über das Mittel hinaus ist nichts bekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Breeding value{}</source>
        <translation>Zuchtwert{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Breeding with a protected variety is often free, selling seed of it seldom; local rules and the licence come first.</source>
        <translation>Züchtung mit einer geschützten Sorte ist oft frei, Verkauf ihres Samens selten; örtliche Regeln und die Lizenz gehen vor.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Breeds true if it shows</source>
        <translation>Reinerbig, wenn es sich zeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Bring &amp;in</source>
        <translation>&amp;Einlesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Bring &amp;in a table …</source>
        <translation>Eine Tabelle &amp;einlesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Bring back the plants that are folded away</source>
        <translation>Eingeklappte Pflanzen zurückholen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/bring_in_step.py"/>
        <source>Bring in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Bring in a table</source>
        <translation>Tabelle einlesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Bring in another boo&amp;k …</source>
        <translation>Ein anderes &amp;Buch einlesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Bring in another book</source>
        <translation>Ein anderes Buch einlesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Bring in {}, {}</source>
        <translation>{} einlesen, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Bring it &amp;in</source>
        <translation>E&amp;inlesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Bring {} into {}</source>
        <translation>{} in {} einlesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Bringing it in …</source>
        <translation>Wird eingelesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Browse …</source>
        <translation>Durchsuchen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>By family</source>
        <translation>Nach Familie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>By retention: founder alleles that a seeded gene drop still finds in the group.</source>
        <translation>Nach Erhalt: Gründerallele, die ein Gendrop mit festem Startwert in der Gruppe noch findet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>By the notes on who sets with whom: fertile 1, poor ½, sterile 0.</source>
        <translation>Nach den Notizen, wer mit wem ansetzt: fruchtbar 1, schlecht ½, steril 0.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>C&amp;odes</source>
        <translation>C&amp;odes</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>C&amp;over</source>
        <translation>&amp;Hülle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <source>C&amp;rop</source>
        <translation>K&amp;ulturart</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>CSV, a table for a spreadsheet</source>
        <translation>CSV, eine Tabelle für die Tabellenkalkulation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Called right: {}</source>
        <translation>Für richtig erklärt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Came &amp;up</source>
        <translation>A&amp;ufgelaufen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Came from {}.</source>
        <translation>Kam von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Came in:</source>
        <translation>Eingelesen:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <location filename="../../pedigreeview/window/strips.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Candidates</source>
        <translation>Kandidaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Candidates for the pollen</source>
        <translation>Kandidaten für den Pollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Candidates that give the pollen</source>
        <translation>Kandidaten, die den Pollen geben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Candidates with &amp;odds</source>
        <translation>Kandidaten mit &amp;Wahrscheinlichkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Cannot be</source>
        <translation>Unmöglich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Cannot be stated: one of the two is a pool whose plants are taken as unlike.</source>
        <translation>Nicht anzugeben: Einer der beiden ist ein Pool, dessen Pflanzen als ungleich gelten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Card of {}</source>
        <translation>Karteikarte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Carriers can be told by a marker</source>
        <translation>Träger sind an einem Marker erkennbar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Carries {}</source>
        <translation>Trägt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/asides.py"/>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Cells that differed:</source>
        <translation>Zellen, die verschieden waren:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Chance</source>
        <translation>Zufall</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Chance of a plant</source>
        <translation>Chance je Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Chance of a selfing</source>
        <translation>Wahrscheinlichkeit einer Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Chance of a selfing before anything was seen: closed buds 5%, unsure 15%, open 30%, not written down 10% (a choice of ours, no source)</source>
        <translation>Wahrscheinlichkeit einer Selbstung, bevor etwas zu sehen war: Knospen geschlossen 5%, unsicher 15%, offen 30%, nicht notiert 10% (unsere Wahl, ohne Quelle)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Chance that so many plants would show it if the classes were really alike (or 3:1 where 1:1 is tested): {}%. Below 50% it is said to be too few to tell.</source>
        <translation>Wahrscheinlichkeit, dass so viele Pflanzen es zeigten, wenn die Klassen wirklich gleich wären (oder 3:1, wo 1:1 geprüft wird): {}%. Unter 50% heißt es: zu wenige, um es zu sagen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>Change sides</source>
        <translation>Seiten tauschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <location filename="../../pedigreeview/window/figure.py"/>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Checks called right</source>
        <translation>Für richtig erklärte Prüfungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Chi-square Σ (seen − expected)² / expected without Yates's correction, where each expected count is 5 or more; else the exact multinomial test.</source>
        <translation>Chi-Quadrat Σ (gesehen − erwartet)² / erwartet ohne Yates-Korrektur, wenn jede erwartete Zahl mindestens 5 ist; sonst der exakte Multinomialtest.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>Choose a JPEG or PNG file.</source>
        <translation>Eine JPEG- oder PNG-Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Choose a cross of which plants are in the book.</source>
        <translation>Eine Kreuzung wählen, von der Pflanzen im Buch stehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Choose a grade, write evidence, or name candidates.</source>
        <translation>Eine Stufe wählen, einen Beleg schreiben oder Kandidaten nennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Choose a pair in the ranking, or type two parents; or count the genes.</source>
        <translation>Ein Paar in der Rangliste wählen oder zwei Eltern eintippen; oder die Gene zählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Choose a plant in the picture to see its relatives.</source>
        <translation>Eine Pflanze im Bild wählen, um ihre Verwandten zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Choose a plant to put in focus first.</source>
        <translation>Zuerst eine Pflanze für den Fokus wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Choose a smaller set of plants above, or the same again.</source>
        <translation>Oben weniger Pflanzen wählen, oder noch einmal dieselben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <location filename="../../pedigreeview/window/relatedness_table.py"/>
        <source>Choose a smaller set of plants.</source>
        <translation>Weniger Pflanzen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Choose another set of plants.</source>
        <translation>Andere Pflanzen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>Choose another.</source>
        <translation>Ein anderes wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Choose the cross that its progeny go to.</source>
        <translation>Die Kreuzung wählen, zu der die Nachkommen kommen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Choose the cross that they came from.</source>
        <translation>Die Kreuzung wählen, aus der sie stammen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Choose the cross.</source>
        <translation>Die Kreuzung wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Choose the plant that takes its place.</source>
        <translation>Die Pflanze wählen, die an ihre Stelle tritt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Choose them</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Choosing crosses together …</source>
        <translation>Kreuzungen werden zusammen ausgewählt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Chromosome doubling</source>
        <translation>Chromosomenverdopplung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Chromosome of a kept gene</source>
        <translation>Chromosom eines behaltenen Gens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Classes in order of their counts, the most frequent first. Enter tests a ratio above.</source>
        <translation>Klassen nach ihrer Zahl geordnet, die häufigste zuerst. Eingabe prüft oben ein Spaltungsverhältnis.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Clear tint and filter</source>
        <translation>Tönung und Filter aufheben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Click a pack or a tab</source>
        <translation>Auf Stapel oder Reiter klicken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>Click a side to take it, or press ← or →.</source>
        <translation>Auf eine Seite klicken, um sie zu nehmen, oder ← oder → drücken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Click a tag</source>
        <translation>Auf ein Etikett klicken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Click to change it (F2)</source>
        <translation>Zum Ändern klicken (F2)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <location filename="../../pedigreeview/window/group_panel.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Close the card</source>
        <translation>Karteikarte schließen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>Close the second picture</source>
        <translation>Zweites Bild schließen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>Close the settings and open them again to see it.</source>
        <translation>Einstellungen schließen und wieder öffnen, um es zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/form.py"/>
        <source>Close without recording (Esc)</source>
        <translation>Schließen ohne Aufzeichnen (Esc)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Co&amp;pies</source>
        <translation>&amp;Kopien</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <location filename="../../pedigreeview/window/relatedness_pair.py"/>
        <source>Coancestry</source>
        <translation>Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Coancestry of the two</source>
        <translation>Verwandtschaft θ der beiden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Coancestry of the two at most</source>
        <translation>Verwandtschaft θ der beiden höchstens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Coancestry of the two {:.4g}.</source>
        <translation>Verwandtschaft θ der beiden {:.4g}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Coancestry set against how alike each of the two is to itself.</source>
        <translation>Verwandtschaft θ, bezogen darauf, wie gleich jeder der beiden sich selbst ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Coancestry with the focus</source>
        <translation>Verwandtschaft θ mit dem Fokus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Coancestry θ</source>
        <translation>Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Code, name, cross or note</source>
        <translation>Code, Name, Kreuzung oder Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Codes</source>
        <translation>Codes</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Codes of &amp;other records</source>
        <translation>Codes &amp;anderer Aufzeichnungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Codes of the other book that are changed</source>
        <translation>Codes des anderen Buches, die geändert werden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Codes of the other book that were changed:</source>
        <translation>Codes des anderen Buches, die geändert wurden:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Codes of the plants</source>
        <translation>Codes der Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_page.py"/>
        <source>Colours are the founders' shares of each plant, grey what is unknown.</source>
        <translation>Die Farben sind die Gründeranteile jeder Pflanze, grau ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Columns x rows, then width x height of one label in millimetres, as in 'A4 3x8 70x36'; with 'gap 2.5x0' and 'margin 4.7x15' where they matter; or 'roll 60x25'.</source>
        <translation>Spalten x Zeilen, dann Breite x Höhe eines Etiketts in Millimetern, wie in „A4 3x8 70x36“; mit „gap 2.5x0“ (Abstand) und „margin 4.7x15“ (Rand), wo es darauf ankommt; oder „roll 60x25“ (Rolle).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Comes from</source>
        <translation>Stammt von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>Compare two side &amp;by side</source>
        <translation>Zwei ne&amp;beneinander vergleichen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Compare with {}, side by side</source>
        <translation>Mit {} vergleichen, nebeneinander</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Compares plants within years: good where several kinds grew in each year</source>
        <translation>Vergleicht Pflanzen innerhalb der Jahre: gut, wenn in jedem Jahr mehrere Herkünfte wuchsen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Comparing the two directions …</source>
        <translation>Beide Richtungen werden verglichen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Complete generation equivalents, on average.</source>
        <translation>Vollständige Generationenäquivalente, im Mittel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>Copy all</source>
        <translation>Alles kopieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Copy its code</source>
        <translation>Code kopieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Copy its parentage as text …</source>
        <translation>Abstammung als Text kopieren …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Copy the &amp;picture</source>
        <translation>Das &amp;Bild kopieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Copy the &amp;table</source>
        <translation>Die &amp;Tabelle kopieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Correct parents</source>
        <translation>Eltern berichtigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Correct them</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Corrected: {}. Undo takes it back.</source>
        <translation>Berichtigt: {}. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Count fruits</source>
        <translation>Früchte zählen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Count seedlings</source>
        <translation>Sämlinge zählen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Count the seed of a packet</source>
        <translation>Samen einer Samentüte zählen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Count the seed of a packet …</source>
        <translation>Samen einer Samentüte zählen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Count …</source>
        <translation>Zählen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Counted row by row from the upper left, for a sheet that is partly used.</source>
        <translation>Zeilenweise von links oben gezählt, für einen teils benutzten Bogen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Counts as</source>
        <translation>Zählt als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Cover off</source>
        <translation>Hülle ab</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Cross it …</source>
        <translation>Kreuzen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Cross that they came from</source>
        <translation>Kreuzung, aus der sie stammen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Cross whose progeny is meant</source>
        <translation>Kreuzung, deren Nachkommen gemeint sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>Cross with mixed pollen</source>
        <translation>Kreuzung mit Mischpollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Cross with mixed pollen …</source>
        <translation>Kreuzung mit Mischpollen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Cross {} is in the book.</source>
        <translation>Kreuzung {} steht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Crosses</source>
        <translation>Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Crosses as pollen parent</source>
        <translation>Kreuzungen als Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Crosses as seed parent</source>
        <translation>Kreuzungen als Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Crosses of one parent at most</source>
        <translation>Kreuzungen je Elter höchstens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Crosses of this pair; ⇄ in the other direction</source>
        <translation>Kreuzungen dieses Paars; ⇄ in der anderen Richtung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Crosses on their way</source>
        <translation>Laufende Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Crosses to choose</source>
        <translation>Zu wählende Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <location filename="../../pedigreeview/window/rail.py"/>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Crossing Book</source>
        <translation>Kreuzungsbuch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Crossing list for a day</source>
        <translation>Kreuzungsliste für einen Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Crossing plan</source>
        <translation>Kreuzungsplan</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl++, Ctrl+−, Ctrl+0</source>
        <translation>Strg++, Strg+−, Strg+0</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+1, 2, 3 …</source>
        <translation>Strg+1, 2, 3 …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+D, Ctrl+Shift+L</source>
        <translation>Strg+D, Strg+Umschalt+L</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/form.py"/>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Ctrl+Enter</source>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+I</source>
        <translation>Strg+I</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+Shift+H, D, Y, G</source>
        <translation>Strg+Umschalt+H, D, Y, G</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+Space</source>
        <translation>Strg+Leertaste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+Z, Ctrl+Shift+Z</source>
        <translation>Strg+Z, Strg+Umschalt+Z</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Ctrl+click</source>
        <translation>Strg+Klick</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Cu&amp;tting, division, sport …</source>
        <translation>S&amp;teckling, Teilung, Sport …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Cull it</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Cull, lost</source>
        <translation>Verwerfen, verloren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Cutting or division</source>
        <translation>Steckling oder Teilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Cutting, division, sport</source>
        <translation>Steckling, Teilung, Sport</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>Cuttings, tubers, division, or a bought hybrid</source>
        <translation>Stecklinge, Knollen, Teilung oder eine gekaufte Hybride</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Cytoplasm</source>
        <translation>Zytoplasma</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Cytoplasm, by the seed-parent line</source>
        <translation>Zytoplasma, nach der Samenelter-Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Cytoplasm: not known, a seed-parent line ends in an unknown plant.</source>
        <translation>Zytoplasma: unbekannt, eine Samenelter-Linie endet in einer unbekannten Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>DOT, the network as a graph</source>
        <translation>DOT, das Netz als Graph</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>Dates</source>
        <translation>Datumsangaben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>Dates such as {}: some date of the table can only be read one way.</source>
        <translation>Datumsangaben wie {}: Mindestens eine in der Tabelle lässt sich nur auf eine Weise lesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Day for which work is listed</source>
        <translation>Tag, für den Arbeiten aufgeführt sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Day of scoring</source>
        <translation>Tag der Bonitur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Day of the list</source>
        <translation>Tag der Liste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Day of the note</source>
        <translation>Tag der Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>Day of the photo</source>
        <translation>Tag des Fotos</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Day on which the plants are in flower</source>
        <translation>Tag, an dem die Pflanzen blühen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Day on which the sheet was filled in</source>
        <translation>Tag, an dem das Blatt ausgefüllt wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Daylily with four sets of chromosomes: clones, few seeds, and a pod made by bees.</source>
        <translation>Taglilie mit vier Chromosomensätzen: Klone, wenig Samen und eine von Bienen bestäubte Kapsel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Days on which both flower; below 0 the days between</source>
        <translation>Tage, an denen beide blühen; unter 0 die Tage dazwischen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Decided against; died or missing. A state, never a deletion.</source>
        <translation>Dagegen entschieden; abgestorben oder verschwunden. Ein Status, nie eine Löschung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete it</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete it and a&amp;ll that came from it: {}</source>
        <translation>Löschen, samt a&amp;llem, was daraus entstand: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete it and leave its progeny an &amp;unknown parent</source>
        <translation>Löschen, den Nachkommen bleibt ein &amp;unbekannter Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete or change what hangs on it first.</source>
        <translation>Zuerst löschen oder ändern, was daran hängt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Delete the marked rows (Ctrl+Delete)</source>
        <translation>Markierte Zeilen löschen (Strg+Entf)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete them all</source>
        <translation>Alle löschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete {}</source>
        <translation>{} löschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Delete {}?</source>
        <translation>{} löschen?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Delete …</source>
        <translation>Löschen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Difference in seeds a fruit</source>
        <translation>Unterschied der Samen je Frucht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Difference of the takes</source>
        <translation>Unterschied der Ansatzraten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Difference {}</source>
        <translation>Unterschied {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>Differences, mine and theirs side by side</source>
        <translation>Unterschiede, meine und fremde nebeneinander</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Different cytoplasm: {} has that of {}, {} that of {}.</source>
        <translation>Verschiedenes Zytoplasma: {} hat das von {}, {} das von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/group_panel.py"/>
        <source>Diversity of a group</source>
        <translation>Vielfalt einer Gruppe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>Diversity …</source>
        <translation>Vielfalt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Do the directions differ?</source>
        <translation>Unterscheiden sich die Richtungen?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Do the plants of a family fall into classes as a ratio says?</source>
        <translation>Verteilen sich die Pflanzen einer Familie auf Klassen, wie ein Spaltungsverhältnis sagt?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>Does the source put the seed parent first?</source>
        <translation>Setzt die Quelle den Samenelter zuerst?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Done: {}. Undo takes it back.</source>
        <translation>Erledigt: {}. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Dots an inch</source>
        <translation>Punkte je Zoll</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_page.py"/>
        <source>Dotted lines come from pollen parents. Of a marked plant: ancestors full with full lines, what came from it hatched with dashed lines.</source>
        <translation>Gepunktete Linien kommen von Pollenelter. Bei einer markierten Pflanze: Ahnen voll mit vollen Linien, was aus ihr kam schraffiert mit gestrichelten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Doubled haploid</source>
        <translation>Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Doubled plant</source>
        <translation>Verdoppelte Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Drag a tag on another</source>
        <translation>Ein Etikett auf ein anderes ziehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Drag the ground, wheel</source>
        <translation>Hintergrund ziehen, Mausrad</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_head.py"/>
        <source>Drag to move the card; a click opens or folds it</source>
        <translation>Ziehen bewegt die Karteikarte; ein Klick klappt sie auf oder zu</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/copying.py"/>
        <source>Drawing the picture …</source>
        <translation>Das Bild wird gezeichnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Drawn at random, 50,000 tables.</source>
        <translation>Zufällig gezogen, 50 000 Tafeln.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Each goes to the cross of its new parents, which is made if the book has none.</source>
        <translation>Jede kommt zur Kreuzung ihrer neuen Eltern; fehlt diese im Buch, wird sie angelegt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Each plant counts once, with its mean where it was scored more than once; beds and seasons are taken as alike for both directions.</source>
        <translation>Jede Pflanze zählt einmal, bei mehreren Bonituren mit ihrem Mittel; Beete und Saisons gelten für beide Richtungen als gleich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>Each row is</source>
        <translation>Jede Zeile ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Each selfing halves what is still heterozygous: F′ = (1 + F) / 2.</source>
        <translation>Jede Selbstung halbiert, was noch heterozygot ist: F′ = (1 + F) / 2.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Each tag is a cross, in the furthest stage that the records show. Choose one by mouse or arrow keys to see what can be done with it.</source>
        <translation>Jedes Etikett ist eine Kreuzung, im weitesten Stadium, das die Aufzeichnungen zeigen. Eine mit Maus oder Pfeiltasten wählen, um zu sehen, was mit ihr zu tun ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Each thing seen multiplies the odds by its chance in a selfed seedling over that in a hybrid; a measure counts at most tenfold.</source>
        <translation>Jede Beobachtung multipliziert das Wahrscheinlichkeitsverhältnis mit ihrer Wahrscheinlichkeit bei einem Sämling aus Selbstung, geteilt durch die bei einer Hybride; ein Maß zählt höchstens zehnfach.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Each year has a level of its own</source>
        <translation>Jedes Jahr hat sein eigenes Niveau</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Effective ancestors</source>
        <translation>Effektive Ahnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Empty &amp;rows</source>
        <translation>Leere &amp;Zeilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Empty rows</source>
        <translation>Leere Zeilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Empty rows for the garden, typed in afterwards by its number.</source>
        <translation>Leere Zeilen für den Garten, danach über seine Nummer einzutippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/form.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Enter a gene</source>
        <translation>Gen eintragen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Enter a trait</source>
        <translation>Merkmal eintragen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Enter a trait that is measured or scored on a scale, and write down its value for the plants on the score sheet of the Records page; then families and plants are ranked here.</source>
        <translation>Ein Merkmal eintragen, das gemessen oder auf einer Skala bonitiert wird, und seinen Wert für die Pflanzen im Boniturblatt der Seite Aufzeichnungen festhalten; dann stehen Familien und Pflanzen hier in einer Rangliste.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Enter keeps this as a book that can be written in: {}</source>
        <translation>Eingabe speichert dies als beschreibbares Buch: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Every plant has the genotypes that its parents can give, each with its chance; every score and every genotype on record rules some of them out, in the plant itself and through it in all of its kin.</source>
        <translation>Jede Pflanze hat die Genotypen, die ihre Eltern geben können, jeden mit seiner Wahrscheinlichkeit; jede aufgezeichnete Bonitur und jeder Genotyp schließt einige davon aus, bei der Pflanze selbst und durch sie bei allen ihren Verwandten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Every plant of the row has the same chance of being an off-type.</source>
        <translation>Jede Pflanze der Reihe ist mit gleicher Wahrscheinlichkeit ein Abweicher.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Every row can be read.</source>
        <translation>Jede Zeile ist lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>Every step is kept in the book, also after it is closed. Undo takes steps back from the newest; those taken back stand in soft letters until something new is written.</source>
        <translation>Jeder Schritt bleibt im Buch, auch nach dem Schließen. Rückgängig nimmt Schritte zurück, den neuesten zuerst; Zurückgenommenes steht in blasser Schrift, bis Neues geschrieben wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Every table of the book, to type into</source>
        <translation>Jede Tabelle des Buchs, zum Hineinschreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Everything that is written in the book.</source>
        <translation>Alles, was im Buch geschrieben steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Evidence on its cross</source>
        <translation>Belege zu ihrer Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Evidence on parents</source>
        <translation>Belege zu Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Exact test of a table of two rows (Fisher; more than two values: Freeman and Halton); Holm's correction over the traits of one generation.</source>
        <translation>Exakter Test einer Tafel mit zwei Zeilen (Fisher; bei mehr als zwei Werten: Freeman und Halton); Holm-Korrektur über die Merkmale einer Generation.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Exact.</source>
        <translation>Exakt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Exact. {}</source>
        <translation>Exakt. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Expected over all genes; selection, and chance in so few plants, move the real share about it.</source>
        <translation>Erwartet über alle Gene; Auslese und der Zufall bei so wenigen Pflanzen verschieben den wirklichen Anteil.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Explain {} with {}</source>
        <translation>{} mit {} erklären</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>F and coancestry follow from these. What a plant's own record says always goes before.</source>
        <translation>F und Verwandtschaft θ folgen daraus. Was die Pflanze selbst an Aufzeichnungen hat, geht immer vor.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>F by the pedigree, as on the card of each plant</source>
        <translation>F nach dem Stammbaum, wie auf der Karteikarte jeder Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>F expected</source>
        <translation>F erwartet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>F expected of its plants</source>
        <translation>Erwartetes F ihrer Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>F expected of its plants, {}</source>
        <translation>Erwartetes F ihrer Pflanzen, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>F of its plants cannot be given until its records are put right.</source>
        <translation>F ihrer Pflanzen lässt sich erst angeben, wenn die Aufzeichnungen berichtigt sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>F of progeny</source>
        <translation>F der Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>F of the progeny at most</source>
        <translation>F der Nachkommen höchstens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <location filename="../../pedigreeview/window/relatedness_pair.py"/>
        <source>F of their progeny, crossed either way</source>
        <translation>F ihrer Nachkommen, in beiden Richtungen gekreuzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>F {}</source>
        <translation>F {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>F&amp;ind …</source>
        <translation>&amp;Suchen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>F&amp;urther</source>
        <translation>&amp;Weiter weg</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>F1 is the seed of a first cross, F2 comes from selfing it, BC1F1 from crossing it back. S1 counts selfings of a plant with no cross behind it.</source>
        <translation>F1 ist der Samen einer ersten Kreuzung, F2 entsteht durch Selbstung, BC1F1 durch Rückkreuzung. S1 zählt Selbstungen einer Pflanze, hinter der keine Kreuzung steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>F3 writes down a variety from elsewhere.</source>
        <translation>F3 zeichnet eine Sorte von anderswo auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Falconer and Mackay 1996 (from memory)</source>
        <translation>Falconer und Mackay 1996 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Families</source>
        <translation>Familien</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Families by what to expect of them</source>
        <translation>Familien nach dem, was von ihnen zu erwarten ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Families sown, with room for how many came up and were kept.</source>
        <translation>Gesäte Familien, mit Platz für die Zahl der aufgelaufenen und behaltenen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Families with their tests</source>
        <translation>Familien mit ihren Tests</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Family, trait and founder</source>
        <translation>Familie, Merkmal und Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Farthest from {}</source>
        <translation>Am fernsten von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>Fetching the photo …</source>
        <translation>Foto wird geholt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Fi&amp;xation, 0 to 1, if known</source>
        <translation>&amp;Fixierung, 0 bis 1, falls bekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/curve.py"/>
        <source>Figure: {} against {}</source>
        <translation>Diagramm: {} gegen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>File to write</source>
        <translation>Zieldatei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Filter by family: code of the cross</source>
        <translation>Nach Familie filtern: Code der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Filter by founder</source>
        <translation>Nach Gründer filtern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Filter by status</source>
        <translation>Nach Status filtern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Filter by text</source>
        <translation>Nach Text filtern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Filter by trait</source>
        <translation>Nach Merkmal filtern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <source>Filter the index by code, name, cross, trait, status or note</source>
        <translation>Den Index nach Code, Name, Kreuzung, Merkmal, Status oder Notiz filtern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>Filter: {}; {} of {} plants fit.</source>
        <translation>Filter: {}; {} von {} Pflanzen passen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find_field.py"/>
        <source>Find a code, name, cross or trait</source>
        <translation>Code, Name, Kreuzung oder Merkmal suchen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Find a pair</source>
        <translation>Paar suchen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find_field.py"/>
        <source>Find a plant by code, name, cross, trait, status or note</source>
        <translation>Eine Pflanze nach Code, Name, Kreuzung, Merkmal, Status oder Notiz suchen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Findin&amp;g on a plant …</source>
        <translation>Befun&amp;d an einer Pflanze …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Finding on a plant</source>
        <translation>Befund an einer Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Finding on record</source>
        <translation>Aufgezeichneter Befund</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Findings on single plants</source>
        <translation>Befunde an einzelnen Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>First cells, and why it was guessed</source>
        <translation>Erste Zellen, und warum es so vermutet wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>First of the pair</source>
        <translation>Erste Pflanze des Paars</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Fisher 1934, Freeman and Halton 1951, Holm 1979 (from memory)</source>
        <translation>Fisher 1934, Freeman und Halton 1951, Holm 1979 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Fisher 1934, Newcombe 1998 (from memory)</source>
        <translation>Fisher 1934, Newcombe 1998 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Fit</source>
        <translation>Einpassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Fit the picture</source>
        <translation>Bild einpassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Fixation</source>
        <translation>Fixierung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Fixation 1 means that a founder breeds true, 0 that its two alleles at a gene are taken as unrelated. Founders count as unrelated to each other. F and coancestry tell how much more alike plants are than this base.</source>
        <translation>Fixierung 1 heißt, dass ein Gründer reinerbig ist, 0, dass seine beiden Allele an einem Gen als nicht verwandt gelten. Gründer gelten untereinander als nicht verwandt. F und Verwandtschaft θ sagen, um wie viel ähnlicher Pflanzen sind als diese Basis.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>Fixation of a founder &amp;variety, 0 to 1</source>
        <translation>Fixierung einer Gründer&amp;sorte, 0 bis 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>Fixation of a founder that is one p&amp;lant, 0 to 1</source>
        <translation>Fixierung eines Gründers, der eine &amp;Pflanze ist, 0 bis 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Fixed as wanted</source>
        <translation>Fixiert wie gewünscht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Fixed at all genes asked</source>
        <translation>An allen gefragten Genen fixiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Flowers and fruits are not written down for both directions.</source>
        <translation>Blüten und Früchte sind nicht für beide Richtungen aufgeschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Flowers for the first cross</source>
        <translation>Blüten für die erste Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Flowers of one plant on one day are not independent of each other, so p is at best a guide.</source>
        <translation>Blüten einer Pflanze an einem Tag sind nicht unabhängig voneinander; p ist also bestenfalls ein Anhalt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Flowers worked</source>
        <translation>Bestäubte Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Focus on {}</source>
        <translation>Fokus auf {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Fold its relatives</source>
        <translation>Ihre Verwandten einklappen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Fold the card to its title</source>
        <translation>Karteikarte auf den Titel zuklappen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Folder of tables</source>
        <translation>Ordner mit Tabellen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>Following the lines …</source>
        <translation>Linien werden verfolgt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>For a measure: to tell a take of 60% from one of 30% in four trials of five, about 48 flowers are worked in each direction.</source>
        <translation>Als Maßstab: Um einen Ansatz von 60% von einem von 30% in vier von fünf Versuchen zu unterscheiden, werden in jeder Richtung etwa 48 Blüten bestäubt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>For people who cross plants by hand: see which plant came from what, click from parents to progeny, and compare the two directions of a cross. It works out how related any two plants are and says what each number rests on.</source>
        <translation>Für alle, die Pflanzen von Hand kreuzen: sehen, welche Pflanze woraus entstand, sich von den Eltern zu den Nachkommen klicken und beide Richtungen einer Kreuzung vergleichen. Das Programm berechnet, wie verwandt zwei Pflanzen sind, und sagt, worauf jede Zahl beruht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <source>Forward (Alt+Right)</source>
        <translation>Vorwärts (Alt+Rechts)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Found of its pollen parent</source>
        <translation>Befunde zu ihrem Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Found to be selfs</source>
        <translation>Als Selbstungen erkannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Founder</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Founder equivalents</source>
        <translation>Gründeräquivalente</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Founder genome equivalents</source>
        <translation>Gründergenom-Äquivalente</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Founder share</source>
        <translation>Gründeranteil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Founder shares</source>
        <translation>Gründeranteile</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/share_bars.py"/>
        <source>Founder shares: {}</source>
        <translation>Gründeranteile: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Founder: nothing is recorded before it.</source>
        <translation>Gründer: Davor ist nichts aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Founders</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Founders after the Multi-Crop Passport Descriptors, version 2.1.</source>
        <translation>Gründer nach den Multi-Crop Passport Descriptors, Fassung 2.1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Founders and what was assumed of them</source>
        <translation>Gründer und was für sie angenommen wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Founders of the progeny</source>
        <translation>Gründer der Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>From &amp;cross, or from seed of a variety or family</source>
        <translation>Aus &amp;Kreuzung oder aus Samen einer Sorte oder Familie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>From 90% on it is a self, up to 10% a true hybrid.</source>
        <translation>Ab 90% ist es eine Selbstung, bis 10% eine echte Hybride.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>From all kin</source>
        <translation>Aus allen Verwandten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>From the records and from how long the crop takes. Your own records count first, where there are enough.</source>
        <translation>Aus den Aufzeichnungen und der üblichen Dauer bei der Kulturart. Eigene Aufzeichnungen gehen vor, wo es genug gibt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Fruit set</source>
        <translation>Fruchtansatz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>Fruits &amp;set</source>
        <translation>An&amp;gesetzte Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Fruits harvested</source>
        <translation>Geerntete Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Fruits set</source>
        <translation>Angesetzte Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>Fruits set and lost</source>
        <translation>Früchte angesetzt, abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Fruits …</source>
        <translation>Früchte …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Full from seven days on; half where nothing is recorded.</source>
        <translation>Voll ab sieben Tagen; halb, wo nichts aufgezeichnet ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Further</source>
        <translation>Weiter weg</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/pages_preview.py"/>
        <source>Further (-)</source>
        <translation>Weiter weg (-)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Garden pea: one cross made in both directions, its F2, and selections to the F5.</source>
        <translation>Gartenerbse: eine Kreuzung in beiden Richtungen, ihre F2 und Auslesen bis zur F5.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Garden sheets</source>
        <translation>Gartenblätter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Gathering what the book knows …</source>
        <translation>Zusammentragen, was das Buch weiß …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>Ge&amp;notype</source>
        <translation>Genot&amp;yp</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Gene</source>
        <translation>Gen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Gene and allele that may be carried</source>
        <translation>Gen und Allel, das getragen sein kann</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Gene …</source>
        <translation>Gen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Generation</source>
        <translation>Generation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Generation names</source>
        <translation>Namen der Generationen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Generations</source>
        <translation>Generationen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Generations down</source>
        <translation>Generationen abwärts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Generations from left to right, or top to bottom again</source>
        <translation>Generationen von links nach rechts, oder wieder von oben nach unten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Generations known</source>
        <translation>Bekannte Generationen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Generations run</source>
        <translation>Verlauf der Generationen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Generations up</source>
        <translation>Generationen aufwärts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Genes</source>
        <translation>Gene</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Genes from what was seen</source>
        <translation>Gene aus dem, was zu sehen war</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Genes in numbers, parents that breed true</source>
        <translation>Gene in Zahlen, reinerbige Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Genes, from all that was seen</source>
        <translation>Gene, nach allem, was gesehen wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Genotypes</source>
        <translation>Genotypen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Genotypes of the parents as recorded; {}% of plants are misread.</source>
        <translation>Genotypen der Eltern wie aufgezeichnet; {}% der Pflanzen sind falsch erkannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Germplasm, crosses and pedigree after the open standard, version 2.1.</source>
        <translation>Pflanzen, Kreuzungen und Abstammung nach dem offenen Standard, Fassung 2.1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Get the newer version as you got this one: bring the folder that it was installed from up to date, and run its install command again.</source>
        <translation>Die neuere Version auf dem gleichen Weg holen wie diese: den Ordner aktualisieren, aus dem sie installiert wurde, und seinen Installationsbefehl noch einmal ausführen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Gives pollen only.</source>
        <translation>Gibt nur Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Gloves and goggles when you open pungent fruit.</source>
        <translation>Handschuhe und Schutzbrille beim Öffnen scharfer Früchte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>Go back to a backup …</source>
        <translation>Zu einer Sicherung zurückkehren …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>Go there</source>
        <translation>Dorthin gehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/figure.py"/>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>Go there: {}</source>
        <translation>Dorthin gehen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>Going back …</source>
        <translation>Sicherung wird zurückgeholt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Grades are words; only odds change numbers. Nothing older is written over.</source>
        <translation>Stufen sind Worte; nur Wahrscheinlichkeiten ändern Zahlen. Älteres wird nicht überschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>GraphML, the network as a graph</source>
        <translation>GraphML, das Netz als Graph</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Grey, with patterns for founders</source>
        <translation>Grau, mit Mustern für Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/group_panel.py"/>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Groups with a relationship of 0.95 or more; a bar beside the map marks.</source>
        <translation>Gruppen mit einem Verwandtschaftsgrad von 0,95 oder mehr; ein Balken neben der Heatmap markiert sie.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Grow {:,} plants of one backcross for one that keeps the gene and has lost an allele of the donor 5 cM away.</source>
        <translation>Für eine Pflanze, die das Gen behält und ein Allel des Donors in 5 cM Abstand verloren hat, {:,} Pflanzen einer Rückkreuzung heranziehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from seed of {}, whose plants mated with each other.</source>
        <translation>Aus Samen von {} herangezogen, deren Pflanzen sich untereinander bestäubten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from seed of {}.</source>
        <translation>Aus Samen von {} herangezogen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: open-pollinated seed of {}; nobody chose the pollen.</source>
        <translation>Aus {} herangezogen: frei abgeblühter Samen von {}; niemand wählte den Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: seed parent not known, {} gave the pollen.</source>
        <translation>Aus {} herangezogen: Samenelter unbekannt, {} gab den Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: {} and {}; which of the two bore the seed is not known.</source>
        <translation>Aus {} herangezogen: {} und {}; welche der beiden den Samen trug, ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: {} as seed parent, {} gave the pollen.</source>
        <translation>Aus {} herangezogen: {} als Samenelter, {} gab den Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: {} as seed parent; the pollen parent is not known.</source>
        <translation>Aus {} herangezogen: {} als Samenelter; der Pollenelter ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: {} as seed parent; who gave the pollen is not sure.</source>
        <translation>Aus {} herangezogen: {} als Samenelter; wer den Pollen gab, ist nicht sicher.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Grown from {}: {} selfed.</source>
        <translation>Aus {} herangezogen: {} geselbstet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Harvest {} is in the book.</source>
        <translation>Ernte {} steht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Harvest {} is in the book; its seed is packet {}.</source>
        <translation>Ernte {} steht im Buch; ihr Samen ist in Samentüte {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Harvest …</source>
        <translation>Ernte …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Harvested</source>
        <translation>Geerntet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Harvests</source>
        <translation>Ernten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Have it between them</source>
        <translation>Zusammen vorhanden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Head of the card</source>
        <translation>Kopf der Karteikarte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/heat_map.py"/>
        <source>Heat map of relatedness</source>
        <translation>Heatmap der Verwandtschaft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Henderson 1975 (from memory)</source>
        <translation>Henderson 1975 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Here both directions go back to the same cytoplasm, so it cannot be what differs.</source>
        <translation>Hier gehen beide Richtungen auf dasselbe Zytoplasma zurück; darin kann der Unterschied also nicht liegen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Hot peppers</source>
        <translation>Scharfe Paprika</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>How a typed 3/5 is read. This goes for you, in every book.</source>
        <translation>Wie ein getipptes 3/5 gelesen wird. Das gilt persönlich, in jedem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>How are the founders kept true?</source>
        <translation>Wie werden die Gründer sortenecht gehalten?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>How are they kept true? …</source>
        <translation>Wie werden sie sortenecht gehalten? …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>How even it is in what was measured</source>
        <translation>Wie einheitlich sie im Gemessenen ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>How far a founder breeds true: 1 a pure line, 0 not fixed at all.</source>
        <translation>Wie reinerbig ein Gründer ist: 1 eine reine Linie, 0 gar nicht fixiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>How is it kept &amp;true?</source>
        <translation>Wie wird sie sorten&amp;echt gehalten?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>How it is &amp;kept</source>
        <translation>A&amp;ufbewahrung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>How it is connected with {}</source>
        <translation>Wie sie mit {} zusammenhängt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>How many of the flowers worked set fruit.</source>
        <translation>Wie viele der bestäubten Blüten Frucht ansetzten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>How many plants are read as another phenotype</source>
        <translation>Wie viele Pflanzen als anderer Phänotyp erkannt werden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>How many plants are read as another phenotype; at 0 every score is believed</source>
        <translation>Wie viele Pflanzen als anderer Phänotyp erkannt werden; bei 0 gilt jede Bonitur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>How many to grow</source>
        <translation>Wie viele heranziehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>How much is passed on</source>
        <translation>Wie viel vererbt wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>How much of a measured trait is passed on, and which plants to keep for it</source>
        <translation>Wie viel von einem gemessenen Merkmal vererbt wird und welche Pflanzen dafür zu behalten sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>How much of all that is wanted the better of the two has, wish by wish.</source>
        <translation>Wie viel von allem Gewünschten der bessere der beiden hat, Wunsch für Wunsch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>How related any plants are, as a heat map</source>
        <translation>Wie verwandt Pflanzen sind, als Heatmap</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>How related each plant is to each other one, with codes on both sides.</source>
        <translation>Wie verwandt jede Pflanze mit jeder anderen ist, mit Codes auf beiden Seiten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>How sure is a parent?</source>
        <translation>Wie sicher ist ein Elter?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>How sure is a parent? …</source>
        <translation>Wie sicher ist ein Elter? …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>How the picture is looked at</source>
        <translation>Wie das Bild betrachtet wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>How the takes are grouped</source>
        <translation>Wie der Ansatz gruppiert ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>How they connect</source>
        <translation>Zusammenhang</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>How to get the newer version</source>
        <translation>Wie man die neuere Version bekommt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>How {} and {} are connected</source>
        <translation>Wie {} und {} zusammenhängen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>In either part</source>
        <translation>In beiden Rollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>In flower on a day</source>
        <translation>An einem Tag in Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>In flower on {}</source>
        <translation>In Blüte am {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>In flower together</source>
        <translation>Gemeinsam in Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>In grey, founders told apart by pattern</source>
        <translation>In Grau, Gründer am Muster zu unterscheiden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>In packets</source>
        <translation>In Samentüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>In the book already: {}.</source>
        <translation>Schon im Buch: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>In the book as planned: {}. Undo (Ctrl+Z) takes it back.</source>
        <translation>Als geplant im Buch: {}. Rückgängig (Strg+Z) nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>In this direction a self shows itself: it is {}.</source>
        <translation>In dieser Richtung ist eine Selbstung zu erkennen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>In this direction no self shows itself; with {} as the seed parent it would be {}.</source>
        <translation>In dieser Richtung ist keine Selbstung zu erkennen; mit {} als Samenelter schon: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>In two steps: keep carriers now, fix later</source>
        <translation>In zwei Schritten: jetzt Träger behalten, später fixieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>In which order do the dates stand?</source>
        <translation>In welcher Reihenfolge stehen die Datumsangaben?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>In your own words, below the title</source>
        <translation>In eigenen Worten, unter dem Titel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Inbreeding</source>
        <translation>Inzucht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Inbreeding F</source>
        <translation>Inzucht F</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Inbreeding of a plant of this cross</source>
        <translation>Inzucht einer Pflanze dieser Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Index</source>
        <translation>Index</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Interval: difference ± t · √(s₁²/n₁ + s₂²/n₂), degrees of freedom by Welch. What can be shown: two-sided t test at 5% with 80% power. Holm's correction over the traits of one generation.</source>
        <translation>Intervall: Unterschied ± t · √(s₁²/n₁ + s₂²/n₂), Freiheitsgrade nach Welch. Was nachweisbar ist: zweiseitiger t-Test bei 5% mit 80% Teststärke. Holm-Korrektur über die Merkmale einer Generation.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>It &amp;shows</source>
        <translation>&amp;Zeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>It breeds &amp;true: take it as fixed</source>
        <translation>&amp;Reinerbig: als fixiert nehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>It cannot carry:</source>
        <translation>Das geht nicht mit:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>It carries all of this.</source>
        <translation>Das geht alles mit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>It does not fit {}</source>
        <translation>Es passt nicht zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>It fits {}</source>
        <translation>Es passt zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>It gets the code {}.</source>
        <translation>Bekommt den Code {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>It is not said how many plants.</source>
        <translation>Es ist nicht gesagt, wie viele Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>It is on the clipboard.</source>
        <translation>Es liegt in der Zwischenablage.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>It stays in the book as a cross that was not made.</source>
        <translation>Bleibt im Buch als Kreuzung, die nicht gemacht wurde.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>It stays in the book as a culled plant; its progeny need it.</source>
        <translation>Bleibt im Buch als verworfene Pflanze; ihre Nachkommen brauchen sie.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>It still segregates for {}: {}.</source>
        <translation>Spaltet noch auf für {}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>It would make no problem.</source>
        <translation>Es gäbe kein Problem.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>It would make {}:</source>
        <translation>Es gäbe {}:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>Its number is {}. This book is only read, so it cannot keep the number; keep it as a book first to type the sheet in by its number.</source>
        <translation>Die Nummer ist {}. Dieses Buch wird nur gelesen und kann die Nummer nicht behalten; zuerst als Buch speichern, um das Blatt über seine Nummer einzutippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>Its number is {}; by it the sheet is typed in on the Season page.</source>
        <translation>Die Nummer ist {}; mit ihr wird das Blatt auf der Seite Saison eingetippt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Its progeny, scores and notes go to that plant; {} is deleted.</source>
        <translation>Ihre Nachkommen, Bonituren und Notizen kommen zu jener Pflanze; {} wird gelöscht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Judging</source>
        <translation>Beurteilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Judging every line …</source>
        <translation>Alle Linien werden beurteilt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/keeping.py"/>
        <source>Keep as a book</source>
        <translation>Als Buch speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>Keep these settings</source>
        <translation>Einstellungen speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>Keep this place</source>
        <translation>Stelle merken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Keeping {} as a book …</source>
        <translation>{} wird als Buch gespeichert …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Kept</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Kept as {}</source>
        <translation>Gespeichert als {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>Kept by seed with bees or wind at work, as squash, maize or cabbage. Each founder counts as a variety of unlike plants (fixation 0), and two crosses with it use two different plants.</source>
        <translation>Durch Samen erhalten, mit Bienen oder Wind, wie Kürbis, Mais oder Kohl. Jeder Gründer zählt als Sorte aus ungleichen Pflanzen (Fixierung 0), und zwei Kreuzungen damit nutzen zwei verschiedene Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Kept, culled or lost</source>
        <translation>Behalten, verworfen oder verloren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Key</source>
        <translation>Legende</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Key of the tint</source>
        <translation>Legende der Tönung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/legend_panel.py"/>
        <source>Key to the signs</source>
        <translation>Legende der Zeichen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Kind of file</source>
        <translation>Art der Datei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Kind of problem to show</source>
        <translation>Art des Problems</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Kind of work shown</source>
        <translation>Gezeigte Art der Arbeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Known from</source>
        <translation>Bekannt aus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>Known genotype</source>
        <translation>Bekannter Genotyp</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Known genotype …</source>
        <translation>Bekannter Genotyp …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Known genotypes</source>
        <translation>Bekannte Genotypen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Label fruits</source>
        <translation>Früchte etikettieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Label stock</source>
        <translation>Etikettenbogen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Lan&amp;guage</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Landscape</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Larger squares (+)</source>
        <translation>Größere Felder (+)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Largest value</source>
        <translation>Größter Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_page.py"/>
        <source>Laying out the map …</source>
        <translation>Karte wird aufgebaut …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_picture.py"/>
        <source>Laying out the whole book …</source>
        <translation>Das ganze Buch wird aufgebaut …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Laying the books side by side …</source>
        <translation>Die Bücher werden nebeneinandergelegt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Least share of the founder</source>
        <translation>Mindestanteil des Gründers</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Least value</source>
        <translation>Kleinster Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Leave out plants that are culled or lost</source>
        <translation>Verworfene oder verlorene Pflanzen auslassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Left out, as their own finding names another pollen parent: {}.</source>
        <translation>Ausgelassen, da ihr eigener Befund einen anderen Pollenelter nennt: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Left out, since what depends on records that cannot be right is withheld: {}.</source>
        <translation>Ausgelassen, da zurückgehalten wird, was von Aufzeichnungen abhängt, die nicht stimmen können: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Left out:</source>
        <translation>Ausgelassen:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Left the progeny of {}, right those of {}; accidental selfs left out.</source>
        <translation>Links die Nachkommen von {}, rechts die von {}; ungewollte Selbstungen ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Licence or &amp;protection</source>
        <translation>Lizenz oder Sorten&amp;schutz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <source>Light or dark</source>
        <translation>Hell oder dunkel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Likely</source>
        <translation>Wahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Likely: a chance of 95% or more; unlikely: 5% or less. Of a family or a variety it is the chance of one of its plants. Enter goes to the plant.</source>
        <translation>Wahrscheinlich: eine Chance von 95% oder mehr; unwahrscheinlich: 5% oder weniger. Bei Familie oder Sorte ist es die Chance einer ihrer Pflanzen. Eingabe führt zur Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Likely: the takes that may lie behind so few flowers (exact 95% interval); the mark on the bar is the take itself, a grey bar too wide to tell. Flowers of one plant on one day are not independent, so even that is a guide. Enter shows the cross on the board.</source>
        <translation>Wahrscheinlich: die Ansatzraten, die hinter so wenigen Blüten liegen können (exaktes 95-%-Intervall); die Marke im Balken ist die Ansatzrate selbst, ein grauer Balken ist zu breit für eine Aussage. Blüten einer Pflanze an einem Tag sind nicht unabhängig, also ist auch das nur ein Anhalt. Eingabe zeigt die Kreuzung auf der Tafel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>Lineage by c&amp;ytoplasm</source>
        <translation>Abstammung nach Z&amp;ytoplasma</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Lineage by its cytoplasm</source>
        <translation>Abstammung nach ihrem Zytoplasma</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>Lineage of {} by cytoplasm</source>
        <translation>Abstammung von {} nach Zytoplasma</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/quick.py"/>
        <source>Lines such as:</source>
        <translation>Zeilen wie:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Lines with their verdicts</source>
        <translation>Linien mit ihren Urteilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Linkage drag around a kept gene</source>
        <translation>Linkage Drag um ein behaltenes Gen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Linkage of neighbouring genes</source>
        <translation>Kopplung benachbarter Gene</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>List more plants</source>
        <translation>Weitere Pflanzen zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Look at</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Look at …</source>
        <translation>Betrachten …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Look round in a demo</source>
        <translation>In einer Demo umsehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Looking at the columns …</source>
        <translation>Spalten werden angesehen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Looking for contradictions …</source>
        <translation>Widersprüche werden gesucht …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Looking for spellings of the same plant …</source>
        <translation>Schreibweisen derselben Pflanze werden gesucht …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Looking through the families …</source>
        <translation>Familien werden durchgesehen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Looking what it cannot carry …</source>
        <translation>Nachsehen, was nicht mitgeht …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Low F of progeny</source>
        <translation>Niedriges F der Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Made</source>
        <translation>Gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>Made again: {}</source>
        <translation>Wiederhergestellt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Made before</source>
        <translation>Schon gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Made one way only: {} bore the seed. With {} as the seed parent as well the two directions could be compared.</source>
        <translation>Nur in einer Richtung gekreuzt: {} trug den Samen. Mit {} auch als Samenelter ließen sich die beiden Richtungen vergleichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>Make again: {}</source>
        <translation>Wiederherstellen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>Make it &amp;anew, with a code of its own</source>
        <translation>&amp;Neu anlegen, mit eigenem Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>Make this pair &amp;both ways ⇄</source>
        <translation>Dieses Paar in &amp;beide Richtungen kreuzen ⇄</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/keeping.py"/>
        <source>Makes {}</source>
        <translation>Erstellt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Making a backup …</source>
        <translation>Sicherung wird erstellt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Map of the beds</source>
        <translation>Beetplan</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>Map of the whole book</source>
        <translation>Karte des ganzen Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Mark a cell further up or left. A table of new plants or crosses comes in through File, Bring in a table …</source>
        <translation>Eine Zelle weiter oben oder links markieren. Eine Tabelle neuer Pflanzen oder Kreuzungen kommt über Datei, Eine Tabelle einlesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/asides.py"/>
        <source>Mark a plant first.</source>
        <translation>Zuerst eine Pflanze markieren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>Mark or pin a plant other than the focus to compare the two.</source>
        <translation>Eine andere Pflanze als den Fokus markieren oder anstecken, um die beiden zu vergleichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Mark plants as kept, or choose another set of plants.</source>
        <translation>Pflanzen als behalten markieren oder andere Pflanzen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Mark them as kept …</source>
        <translation>Als behalten markieren …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Marks where to cut and fold</source>
        <translation>Marken zum Schneiden und Falten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Matrix of coefficients</source>
        <translation>Matrix der Koeffizienten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>May have given the pollen, with odds</source>
        <translation>Kann den Pollen gegeben haben, mit Wahrscheinlichkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Mean coancestry</source>
        <translation>Mittlere Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Mean coancestry {:.4f}, mean merit {:.3f}</source>
        <translation>Mittlere Verwandtschaft θ {:.4f}, mittlere Güte {:.3f}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Mean merit at least</source>
        <translation>Mittlere Güte mindestens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>Meaning of column {}</source>
        <translation>Bedeutung der Spalte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>Meaning of {}, in {}</source>
        <translation>Bedeutung von {}, in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>Means</source>
        <translation>Bedeutet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Measures of the stock</source>
        <translation>Maße des Bogens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <location filename="../../pedigreeview/window/figure.py"/>
        <source>Mend: {}</source>
        <translation>Abhilfe: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Merit</source>
        <translation>Güte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Merit of a cross</source>
        <translation>Güte einer Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Mid-parent</source>
        <translation>Elternmittel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Mid-parent, and how many observations stand behind it</source>
        <translation>Elternmittel, und wie viele Beobachtungen dahinterstehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Mind, with {}</source>
        <translation>Bei {} beachten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/strips.py"/>
        <source>Mind, with {}: {}</source>
        <translation>Bei {} beachten: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>Mine</source>
        <translation>Meine</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>Mine, and theirs where &amp;blank</source>
        <translation>Meine, und fremde, wo &amp;leer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Mixed-up labels</source>
        <translation>Vertauschte Etiketten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>More than the bed of {:,} holds: {}.</source>
        <translation>Mehr, als das Beet von {:,} fasst: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>More than {:,} paths are counted but not listed.</source>
        <translation>Mehr als {:,} Wege werden gezählt, aber nicht aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>More tools</source>
        <translation>Weitere Werkzeuge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>More …</source>
        <translation>Mehr …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Mother plant</source>
        <translation>Mutterpflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Mouse</source>
        <translation>Maus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Move and delete</source>
        <translation>Verschieben und löschen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>Move {}</source>
        <translation>{} umsetzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>Move …</source>
        <translation>Umsetzen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Moves</source>
        <translation>Umgesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>Multiplication signs, in &amp;alphabetical order</source>
        <translation>Malzeichen, in &amp;alphabetischer Folge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>My crosses</source>
        <translation>Meine Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>N&amp;ame a line as a variety …</source>
        <translation>L&amp;inie als Sorte benennen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>NPZ, an array for NumPy</source>
        <translation>NPZ, ein Array für NumPy</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Name a line as a variety</source>
        <translation>Linie als Sorte benennen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Name at least one.</source>
        <translation>Mindestens eine nennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>Name of the bookmark</source>
        <translation>Name des Lesezeichens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>Name of the trait of column {}</source>
        <translation>Name des Merkmals der Spalte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Name plants by their codes, parted by commas.</source>
        <translation>Pflanzen mit ihren Codes nennen, durch Kommas getrennt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Name the parent that is right.</source>
        <translation>Den richtigen Elter nennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Name the plants.</source>
        <translation>Die Pflanzen nennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Name this line as a variety …</source>
        <translation>Diese Linie als Sorte benennen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Named and kept alike: a pool of like plants from elsewhere.</source>
        <translation>Benannt und gleich erhalten: ein Pool gleicher Pflanzen von außerhalb.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Named places in this book</source>
        <translation>Benannte Stellen in diesem Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Nearer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/pages_preview.py"/>
        <source>Nearer (+)</source>
        <translation>Näher (+)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Nearest to {}</source>
        <translation>Am nächsten zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Nearly the same</source>
        <translation>Fast gleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_table.py"/>
        <source>Nearly the same, marked by a bar: {}</source>
        <translation>Fast gleich, durch einen Balken markiert: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Needs a family with chosen plants and others, and measured progeny.</source>
        <translation>Braucht eine Familie mit gewählten und anderen Pflanzen, und gemessene Nachkommen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Needs three families or more with measured parents that differ.</source>
        <translation>Braucht drei oder mehr Familien mit gemessenen Eltern, die sich unterscheiden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Neighbours are</source>
        <translation>Nachbarn sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Neither of the two best is rejected, though {} plants should tell them apart.</source>
        <translation>Keines der beiden besten ist verworfen, obwohl {} Pflanzen sie unterscheiden sollten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Never crossed before</source>
        <translation>Noch nie gekreuzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Never taste a cross with a wild nightshade, nor a bitter squash: poisons can rise above those of both parents. Potato crosses have passed the limit for eating.</source>
        <translation>Nie eine Kreuzung mit einem wilden Nachtschatten kosten, auch keinen bitteren Kürbis: Gifte können höher steigen als bei beiden Eltern. Kartoffelkreuzungen haben die Grenze für den Verzehr schon überschritten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>New book</source>
        <translation>Neues Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>New in the book: {}.</source>
        <translation>Neu im Buch: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>New trait …</source>
        <translation>Neues Merkmal …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>New …</source>
        <translation>Neu …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>New: {}. Both books have {}.</source>
        <translation>Neu: {}. Beide Bücher haben {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>New: {}. The books have nothing in common.</source>
        <translation>Neu: {}. Die Bücher haben nichts gemeinsam.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>No backup was made: {}</source>
        <translation>Keine Sicherung erstellt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>No chances can be given</source>
        <translation>Keine Wahrscheinlichkeiten möglich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>No code clashes and no cell differs.</source>
        <translation>Kein Code stößt zusammen und keine Zelle ist verschieden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>No common ancestor is recorded.</source>
        <translation>Kein gemeinsamer Ahn ist aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>No cross is recorded yet. Begin by planning one.</source>
        <translation>Noch keine Kreuzung aufgezeichnet. Zuerst eine planen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>No cross is recorded yet. Plan a cross, and this list says when its flowers, covers, fruits and seed fall due.</source>
        <translation>Noch keine Kreuzung aufgezeichnet. Eine Kreuzung planen, und diese Liste sagt, wann ihre Blüten, Hüllen, Früchte und Samen fällig sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>No cross to look at yet</source>
        <translation>Noch keine Kreuzung zu betrachten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>No dates are recorded, so none could be checked.</source>
        <translation>Keine Datumsangaben aufgezeichnet, also nichts zu prüfen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>No day is known</source>
        <translation>Kein Tag bekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>No day to look at</source>
        <translation>Kein Tag zu betrachten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>No family can be counted yet</source>
        <translation>Noch keine Familie auszuzählen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>No garden sheet was printed from this book yet. Print one, fill it in in the garden, and type it in here by its number, in its own order.</source>
        <translation>Aus diesem Buch wurde noch kein Gartenblatt gedruckt. Eines drucken, im Garten ausfüllen und hier über seine Nummer eintippen, in seiner eigenen Reihenfolge.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>No gene is asked about.</source>
        <translation>Nach keinem Gen ist gefragt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>No gene is written down yet</source>
        <translation>Noch kein Gen aufgeschrieben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>No gene tells selfs from hybrids in either direction: the parents' genotypes are not known, or they do not differ in a recessive.</source>
        <translation>Kein Gen unterscheidet Selbstungen von Hybriden, in keiner Richtung: Die Genotypen der Eltern sind unbekannt, oder sie unterscheiden sich in keinem rezessiven Allel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>No heat map</source>
        <translation>Keine Heatmap</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>No pair is listed: loosen the limits or add candidates.</source>
        <translation>Kein Paar aufgeführt: Grenzen lockern oder Kandidaten hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>No pair keeps to the limits. Loosen one, or add candidates.</source>
        <translation>Kein Paar hält die Grenzen ein. Eine lockern oder Kandidaten hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>No parent or cross is called so.</source>
        <translation>Kein Elter und keine Kreuzung heißt so.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>No plant has a place yet. Write places as 'Bed 2 / row 3 / 7': bed, row, and the position counted from the stake.</source>
        <translation>Noch keine Pflanze hat einen Platz. Plätze schreiben wie „Beet 2 / Reihe 3 / 7“: Beet, Reihe und die Position, vom Pfahl aus gezählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>No plant is named.</source>
        <translation>Keine Pflanze ist genannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>No plant is picked.</source>
        <translation>Keine Pflanze ausgewählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/canvas.py"/>
        <source>No plant is recorded in this book yet.

F3 writes down a variety from elsewhere, F4 a cross of two.
A table that you have comes in through File, Bring in a table …</source>
        <translation>In diesem Buch ist noch keine Pflanze aufgezeichnet.

F3 zeichnet eine Sorte von anderswo auf, F4 eine Kreuzung von zweien.
Eine vorhandene Tabelle kommt über Datei, Eine Tabelle einlesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>No plant of it is scored for a trait in words.</source>
        <translation>Keine ihrer Pflanzen ist in einem Merkmal mit Worten bonitiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>No plant of the book shares an ancestor with it.</source>
        <translation>Keine Pflanze des Buchs hat einen Ahn mit ihr gemeinsam.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/group_panel.py"/>
        <source>No plant of this book can be looked at.</source>
        <translation>Keine Pflanze dieses Buchs lässt sich betrachten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>No plant of this choice is recorded.</source>
        <translation>Keine Pflanze dieser Auswahl ist aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>No plants yet.</source>
        <translation>Noch keine Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>No plants yet.

F3 writes down a variety from elsewhere, F4 a cross of two.</source>
        <translation>Noch keine Pflanzen.

F3 zeichnet eine Sorte von anderswo auf, F4 eine Kreuzung von zweien.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>No pollen parent is recorded for {}.</source>
        <translation>Für {} ist kein Pollenelter aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>No pollination is recorded here. Write pollinations down with their flowers, and later the fruits set: how often they take is then shown by parent, direction, person and cover.</source>
        <translation>Hier ist keine Bestäubung aufgezeichnet. Bestäubungen mit ihren Blüten aufschreiben, später die angesetzten Früchte: Dann zeigt sich die Ansatzrate nach Elter, Richtung, Person und Hülle.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>No preview: a network, not a picture.</source>
        <translation>Keine Vorschau: ein Netz, kein Bild.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>No progeny is recorded for {}.</source>
        <translation>Für {} sind keine Nachkommen aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>No protected variety as a parent</source>
        <translation>Keine geschützte Sorte als Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>No reciprocal cross is recorded for {}.</source>
        <translation>Für {} ist keine reziproke Kreuzung aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>No reciprocal pair yet</source>
        <translation>Noch kein reziprokes Paar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>No row holds this text. Escape shows all rows again.</source>
        <translation>Keine Zeile enthält diesen Text. Esc zeigt wieder alle Zeilen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>No row of plants yet</source>
        <translation>Noch keine Reihe von Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>No rule of inheritance holds for the progeny of such a cross.</source>
        <translation>Für die Nachkommen einer solchen Kreuzung gilt keine Vererbungsregel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>No seed parent is recorded for {}.</source>
        <translation>Für {} ist kein Samenelter aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>No selfed progeny of both directions are scored yet: they would tell the mother plant from the cytoplasm.</source>
        <translation>Noch sind keine geselbsteten Nachkommen beider Richtungen bonitiert: Sie würden die Mutterpflanze vom Zytoplasma unterscheiden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>No such pair</source>
        <translation>Kein solches Paar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>No trait is recorded yet. Begin with a new trait.</source>
        <translation>Noch kein Merkmal aufgezeichnet. Mit einem neuen Merkmal beginnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>No trait is scored in the progeny of both directions.</source>
        <translation>Kein Merkmal ist in den Nachkommen beider Richtungen bonitiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>No two of these plants have a relationship of 0.95 or more.</source>
        <translation>Keine zwei dieser Pflanzen haben einen Verwandtschaftsgrad von 0,95 oder mehr.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>No wish at the side has a gene in the book. Add one (a trait such as height, with the value that is wanted), or count the genes.</source>
        <translation>Kein Wunsch an der Seite hat ein Gen im Buch. Einen hinzufügen (ein Merkmal wie Wuchshöhe mit dem gewünschten Wert) oder die Gene zählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>No wish with a gene behind it.</source>
        <translation>Kein Wunsch, hinter dem ein Gen steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>No&amp;te</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Node-link JSON</source>
        <translation>Node-link-JSON</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>None of the ratios tried fits this count.</source>
        <translation>Keines der geprüften Spaltungsverhältnisse passt zu dieser Zählung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>None: every score and genotype of this gene can be true.</source>
        <translation>Keine: Jede Bonitur und jeder Genotyp dieses Gens kann stimmen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Not followed for tetraploids, nor for more than six genes together.</source>
        <translation>Nicht verfolgt bei Tetraploiden und bei mehr als sechs Genen zusammen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Not given: the two differ in ploidy, or their ploidy is odd.</source>
        <translation>Nicht angegeben: Die beiden unterscheiden sich in der Ploidie, oder ihre Ploidie ist ungerade.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Not in this book: {}.</source>
        <translation>Nicht in diesem Buch: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Not made before</source>
        <translation>Noch nicht gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Not noted as sterile both ways</source>
        <translation>Nicht als beiderseits steril notiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Not worked out</source>
        <translation>Nicht berechnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Not written down in this book: {}.</source>
        <translation>In diesem Buch nicht aufgeschrieben: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Note on it …</source>
        <translation>Notiz dazu …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Noted as fertile</source>
        <translation>Als fruchtbar notiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Nothing hangs on it.</source>
        <translation>Nichts hängt daran.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Nothing has come in: the cells that are marked cannot be read. Mend them in the file and read it again, or give their column another meaning.</source>
        <translation>Nichts wurde eingelesen: Die markierten Zellen sind nicht lesbar. In der Datei berichtigen und sie neu lesen, oder ihrer Spalte eine andere Bedeutung geben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Nothing in the records looks wrong: {}.</source>
        <translation>Nichts in den Aufzeichnungen sieht falsch aus: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Nothing is due within two weeks of {}. Plan a cross or record a pollination, and what comes of it is listed here; or choose another day.</source>
        <translation>In den zwei Wochen ab {} ist nichts fällig. Eine Kreuzung planen oder eine Bestäubung aufzeichnen, dann steht hier, was daraus folgt; oder einen anderen Tag wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Nothing is measured yet</source>
        <translation>Noch nichts gemessen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Nothing is recorded. {}</source>
        <translation>Nichts ist aufgezeichnet. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Nothing is said yet.</source>
        <translation>Noch nichts angegeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Nothing is written in this table yet. New … writes down the first row.</source>
        <translation>In dieser Tabelle steht noch nichts. Neu … zeichnet die erste Zeile auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <source>Nothing new came in.</source>
        <translation>Nichts Neues eingelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/bring_in_step.py"/>
        <source>Nothing new.</source>
        <translation>Nichts Neues.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Nothing of this kind is due. Choose all work to see the rest.</source>
        <translation>Nichts dieser Art ist fällig. Alle Arbeiten wählen, um den Rest zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>Nothing was lost.</source>
        <translation>Nichts ging verloren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Nothing was pasted: {} by {} cells lie ready, and {} by {} fit from the marked cell on.</source>
        <translation>Nichts wurde eingefügt: {} mal {} Zellen liegen bereit, und {} mal {} passen ab der markierten Zelle.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Nothing would change.</source>
        <translation>Nichts würde sich ändern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>Nothing yet: pairs are weighed by kinship, flowering and notes alone.</source>
        <translation>Noch nichts: Paare werden nur nach Verwandtschaft, Blüte und Notizen gewichtet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Noticed while opening</source>
        <translation>Beim Öffnen bemerkt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Now: {}.</source>
        <translation>Jetzt: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Number of the sheet, in the box at its top</source>
        <translation>Nummer des Blatts, im Kasten oben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Obtained &amp;from</source>
        <translation>&amp;Herkunft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Obtained from</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Of the loci at which the parents differ, in a plant that nobody chose.</source>
        <translation>Von den Genen, in denen sich die Eltern unterscheiden, in einer Pflanze, die niemand gewählt hat.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Of the ratios tried only {} fits.</source>
        <translation>Von den geprüften Spaltungsverhältnissen passt nur {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>Of these &amp;lost since</source>
        <translation>Davon &amp;abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Off-types</source>
        <translation>Abweicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Off-types seen</source>
        <translation>Gesehene Abweicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>On it hang:</source>
        <translation>Daran hängen:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>On the map</source>
        <translation>Auf der Karte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>On this day</source>
        <translation>An diesem Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>One code, two different things</source>
        <translation>Ein Code, zwei verschiedene Dinge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>One file holds your varieties, crosses, seed and plants. Everything is saved as you write it.</source>
        <translation>Eine Datei enthält Sorten, Kreuzungen, Samen und Pflanzen. Alles wird beim Schreiben gespeichert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>One for each flower or fruit</source>
        <translation>Eines je Blüte oder Frucht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>One genotype multiplied, as potato, dahlia, rose, or an F1 from the shop. Each founder counts as one single plant that is not fixed (fixation 0).</source>
        <translation>Ein Genotyp, vermehrt, wie Kartoffel, Dahlie, Rose oder eine F1 aus dem Handel. Jeder Gründer zählt als eine einzige, nicht fixierte Pflanze (Fixierung 0).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>One label for each plant that grows.</source>
        <translation>Ein Etikett je wachsende Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>One problem; it is marked and listed.</source>
        <translation>Ein Problem; es ist markiert und aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>One row for each plant with its parents, as XLSX.</source>
        <translation>Eine Zeile für jede Pflanze mit ihren Eltern, als XLSX.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>One row for each plant with its parents.</source>
        <translation>Eine Zeile für jede Pflanze mit ihren Eltern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>One seed parent with one pollen parent: an intention with a code.</source>
        <translation>Ein Samenelter mit einem Pollenelter: ein Vorhaben mit einem Code.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>One stake for each row: family, day of sowing, number of plants.</source>
        <translation>Ein Pfahl je Reihe: Familie, Tag der Aussaat, Zahl der Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>One tag for each flower</source>
        <translation>Ein Etikett je Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>One tag for each fruit that hangs</source>
        <translation>Ein Etikett je hängende Frucht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>One tag for each fruit that hangs, to last until it is picked.</source>
        <translation>Ein Etikett je hängende Frucht, haltbar bis zum Pflücken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>One tag for each pollination: cross, parents, date, flowers, initials.</source>
        <translation>Ein Etikett je Bestäubung: Kreuzung, Eltern, Datum, Blüten, Kürzel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>One weight at least is to be above 0.</source>
        <translation>Mindestens ein Gewicht muss über 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>One working of a cross on one day. A cross may have many.</source>
        <translation>Das Bestäuben einer Kreuzung an einem Tag. Eine Kreuzung kann viele haben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Only its own data hang on it:</source>
        <translation>Nur ihre eigenen Daten hängen daran:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/keeping.py"/>
        <source>Only look, and put this line away</source>
        <translation>Nur ansehen und diese Zeile ausblenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Only pollinations that say both flowers and fruits set. Every flower is taken as a trial of its own, which flowers of one plant on one day are not.</source>
        <translation>Nur Bestäubungen mit Angabe von Blüten und angesetzten Früchten. Jede Blüte gilt als eigener Versuch; Blüten einer Pflanze an einem Tag sind das nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>Only those that matter</source>
        <translation>Nur die, auf die es ankommt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Open a &amp;demo</source>
        <translation>De&amp;mo öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Open a &amp;folder …</source>
        <translation>&amp;Ordner öffnen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Open a book or a table</source>
        <translation>Buch oder Tabelle öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Open a book or table …</source>
        <translation>Buch oder Tabelle öffnen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Open a folder</source>
        <translation>Ordner öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Open a folder …</source>
        <translation>Ordner öffnen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>Open another file …</source>
        <translation>Andere Datei öffnen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>Open it to read only</source>
        <translation>Nur zum Lesen öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Open its card</source>
        <translation>Ihre Karteikarte öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Open the card</source>
        <translation>Karteikarte öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Open the demo '{}'</source>
        <translation>Demo „{}“ öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Open-pollinated seed</source>
        <translation>Frei abgeblühter Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Open-pollinated seed{}: the pollen parent counts as unknown.</source>
        <translation>Frei abgeblühter Samen{}: Der Pollenelter zählt als unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Open-pollinated seed{}: {:.3g} of it counts as crossed with an unknown plant.</source>
        <translation>Frei abgeblühter Samen{}: {:.3g} davon zählt als Kreuzung mit einer unbekannten Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>Open-pollinated varieties</source>
        <translation>Frei abgeblühte Sorten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Opening {} …</source>
        <translation>{} wird geöffnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Order of the plants</source>
        <translation>Reihenfolge der Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_table.py"/>
        <source>Ordered by likeness: average linkage on 1 − R, with R = θ(a, b) / √(θ(a, a) · θ(b, b)).</source>
        <translation>Nach Ähnlichkeit geordnet: Average Linkage auf 1 − R, mit R = θ(a, b) / √(θ(a, a) · θ(b, b)).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Other plants give the pollen</source>
        <translation>Andere Pflanzen geben den Pollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Other ways of looking at the pedigree</source>
        <translation>Andere Ansichten des Stammbaums</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Out of the listed pairs, so many crosses that the plants raised from them are as little akin as can be, while the wanted merit is kept.</source>
        <translation>Aus den aufgeführten Paaren so viele Kreuzungen, dass die daraus herangezogenen Pflanzen möglichst wenig verwandt sind und die gewünschte Güte erhalten bleibt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Over all pairs, each plant with itself among them. F is {} on average.</source>
        <translation>Über alle Paare, jede Pflanze auch mit sich selbst. F ist im Mittel {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Own values</source>
        <translation>Eigene Werte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>P&amp;lace</source>
        <translation>P&amp;latz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>P&amp;ollen parent ♂</source>
        <translation>P&amp;ollenelter ♂</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>P(genotypes | seen) ∝ Π P(genotype | parents' genotypes) · Π P(seen | genotype), summed by variable elimination</source>
        <translation>P(Genotypen | gesehen) ∝ Π P(Genotyp | Genotypen der Eltern) · Π P(gesehen | Genotyp), summiert durch Variablenelimination</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>PDF in grey, for a printer without colour</source>
        <translation>PDF in Grau, für Drucker ohne Farbe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>PDF, a picture for paper</source>
        <translation>PDF, ein Bild für Papier</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>PDF, for paper</source>
        <translation>PDF, für Papier</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>PNG, a picture for messages</source>
        <translation>PNG, ein Bild für Nachrichten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>PNG, for messages</source>
        <translation>PNG, für Nachrichten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/pages_preview.py"/>
        <source>Page {} of {}</source>
        <translation>Seite {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>Pair slip</source>
        <translation>Paarzettel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Pairs worth crossing</source>
        <translation>Lohnende Paare</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Pairs worth crossing, and how many to grow</source>
        <translation>Lohnende Paare, und wie viele Pflanzen heranzuziehen sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Pairs, the best first</source>
        <translation>Paare, das beste zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Pap&amp;er</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Parent or cross</source>
        <translation>Elter oder Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Parentage as te&amp;xt …</source>
        <translation>Abstammung als Te&amp;xt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>Parentage as text</source>
        <translation>Abstammung als Text</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/pages.py"/>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>Parents</source>
        <translation>Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_view.py"/>
        <source>Parents and progeny</source>
        <translation>Eltern und Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Parents and progeny are taken as grown alike.</source>
        <translation>Eltern und Nachkommen gelten als unter gleichen Bedingungen gewachsen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>Parents of {}</source>
        <translation>Eltern von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>Parents: {}</source>
        <translation>Eltern: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Parts in braces are filled in: {{yy}} the year, {{cross}} a cross, {{plant}} a running number; {{plant:2}} gives it two digits.</source>
        <translation>Teile in Klammern werden ausgefüllt: {{yy}} das Jahr, {{cross}} eine Kreuzung, {{plant}} eine laufende Nummer; {{plant:2}} macht sie zweistellig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Parts of the season</source>
        <translation>Teile der Saison</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Passport data</source>
        <translation>Passdaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_page.py"/>
        <source>Patterns tell classes apart without colour; dots stand for no value.</source>
        <translation>Muster unterscheiden Klassen ohne Farbe; Punkte stehen für keinen Wert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Pearson 1900, Holm 1979 (from memory)</source>
        <translation>Pearson 1900, Holm 1979 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Pedigree</source>
        <translation>Stammbaum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>Pedigree in grey, founders told apart by pattern</source>
        <translation>Stammbaum in Grau, Gründer durch Muster unterschieden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>Photo of {}: {}</source>
        <translation>Foto von {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>Photos of {}</source>
        <translation>Fotos von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>Pick none</source>
        <translation>Auswahl aufheben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Pick plants in the picture or on the map (Ctrl and a click), or choose another set of plants.</source>
        <translation>Pflanzen im Bild oder auf der Karte auswählen (Strg und Klick), oder andere Pflanzen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Pick the marked plants</source>
        <translation>Markierte Pflanzen auswählen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pedigree_page.py"/>
        <source>Picture of the pedigree</source>
        <translation>Bild des Stammbaums</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>Pictures ({})</source>
        <translation>Bilder ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Pin</source>
        <translation>Anstecken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>Pin a second plant to see how the two are related: P, or its card.</source>
        <translation>Eine zweite Pflanze anstecken, um zu sehen, wie die beiden verwandt sind: P, oder ihre Karteikarte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Pin to compare</source>
        <translation>Zum Vergleich anstecken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>Pin two plants, or mark one beside the focus, to see how they connect.</source>
        <translation>Zwei Pflanzen anstecken, oder eine neben dem Fokus markieren, um ihren Zusammenhang zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Pin {} to compare</source>
        <translation>{} zum Vergleich anstecken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Pinned plants</source>
        <translation>Angesteckte Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>Pins</source>
        <translation>Nadeln</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Plain paper, and every plant</source>
        <translation>Schlichtes Papier und jede Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Plan a cross …</source>
        <translation>Kreuzung planen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>Plan all of these</source>
        <translation>Alle diese planen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Plan both directions ⇄</source>
        <translation>Beide Richtungen planen ⇄</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Plan this cross</source>
        <translation>Diese Kreuzung planen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Plan {}</source>
        <translation>{} planen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Plan {} × {}</source>
        <translation>{} × {} planen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Plans that keep plants on the way</source>
        <translation>Pläne, die unterwegs Pflanzen behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Plant of a cross</source>
        <translation>Pflanze einer Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Plant table, CSV</source>
        <translation>Pflanzentabelle, CSV</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Plant table, spreadsheet</source>
        <translation>Pflanzentabelle, Arbeitsblatt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Plants &amp;raised …</source>
        <translation>&amp;Herangezogene Pflanzen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Plants and crosses as a network, for drawing alone.</source>
        <translation>Pflanzen und Kreuzungen als Netz, nur zum Zeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Plants and crosses as a network, for programs that draw networks.</source>
        <translation>Pflanzen und Kreuzungen als Netz, für Programme, die Netze zeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Plants and crosses as a network, for scripts.</source>
        <translation>Pflanzen und Kreuzungen als Netz, für Skripte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/figure.py"/>
        <source>Plants behind this</source>
        <translation>Pflanzen dahinter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Plants by breeding value</source>
        <translation>Pflanzen nach Zuchtwert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Plants by traits, with room to score.</source>
        <translation>Pflanzen mal Merkmale, mit Platz zum Bonitieren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find_field.py"/>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <source>Plants found</source>
        <translation>Gefundene Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Plants growing or kept</source>
        <translation>Wachsende oder behaltene Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Plants in all</source>
        <translation>Pflanzen insgesamt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Plants kept</source>
        <translation>Behaltene Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Plants of the cross with their odds</source>
        <translation>Pflanzen der Kreuzung mit ihrer Wahrscheinlichkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Plants raised</source>
        <translation>Herangezogene Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Plants raised from it …</source>
        <translation>Daraus herangezogene Pflanzen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Plants to score</source>
        <translation>Zu bonitierende Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Plants to show</source>
        <translation>Gezeigte Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Plants typed in</source>
        <translation>Eingetippte Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Plants visited</source>
        <translation>Besuchte Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Plants with their chances</source>
        <translation>Pflanzen mit ihren Wahrscheinlichkeiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Plants: {}</source>
        <translation>Pflanzen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Plo&amp;idy, if another</source>
        <translation>Plo&amp;idie, falls abweichend</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>Ploidy</source>
        <translation>Ploidie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_pair.py"/>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>Point at a line to see it in the picture; a click keeps it lit.</source>
        <translation>Auf eine Linie zeigen, um sie im Bild zu sehen; ein Klick lässt sie leuchten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Point at a square to read its value; a click explains the pair.</source>
        <translation>Auf ein Feld zeigen, um seinen Wert zu lesen; ein Klick erklärt das Paar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Point at the figure, or move along it by the arrow keys, to read it off.</source>
        <translation>Auf das Diagramm zeigen oder es mit den Pfeiltasten durchgehen, um Werte abzulesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>Pollen collected</source>
        <translation>Pollen gesammelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Pollen collected …</source>
        <translation>Pollen gesammelt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Pollen kept</source>
        <translation>Aufbewahrter Pollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Pollen of the same plant, or of its clone.</source>
        <translation>Pollen derselben Pflanze oder ihres Klons.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>Pollen parent</source>
        <translation>Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Pollen parent of a pair to weigh</source>
        <translation>Pollenelter eines zu gewichtenden Paars</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>Pollen parent {} ({}).</source>
        <translation>Pollenelter {} ({}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Pollen parent ♂</source>
        <translation>Pollenelter ♂</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Pollen under glass</source>
        <translation>Pollen unter Glas</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Pollinate</source>
        <translation>Bestäuben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Pollinate {} again</source>
        <translation>{} noch einmal bestäuben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Pollinated</source>
        <translation>Bestäubt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Pollination on it …</source>
        <translation>Bestäubung darauf …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>Pollination {} is in the book.</source>
        <translation>Bestäubung {} steht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Pollination …</source>
        <translation>Bestäubung …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Pollinations</source>
        <translation>Bestäubungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Pollinations with room for the fruits set and lost.</source>
        <translation>Bestäubungen mit Platz für angesetzte und abgefallene Früchte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Pot labels</source>
        <translation>Topfetiketten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Press Enter to change it</source>
        <translation>Eingabe drücken, um es zu ändern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/pages_preview.py"/>
        <source>Preview of the page</source>
        <translation>Vorschau der Seite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/sheet_preview.py"/>
        <source>Preview of the sheets</source>
        <translation>Vorschau der Blätter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Print a score sheet …</source>
        <translation>Boniturblatt drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Print for these …</source>
        <translation>Für diese drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Print its tag …</source>
        <translation>Ihr Etikett drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Print pollinations …</source>
        <translation>Bestäubungen drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Print tags and &amp;lists …</source>
        <translation>Etiketten und &amp;Listen drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Print tags and lists</source>
        <translation>Etiketten und Listen drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Print tags and lists (Ctrl+Shift+P)</source>
        <translation>Etiketten und Listen drucken (Strg+Umschalt+P)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Print the crossing list …</source>
        <translation>Kreuzungsliste drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Print the picture</source>
        <translation>Bild drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Print to the file</source>
        <translation>In die Datei drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Print …</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Printing …</source>
        <translation>Wird gedruckt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/preview_panel.py"/>
        <source>Problems by row and column</source>
        <translation>Probleme nach Zeile und Spalte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Progeny</source>
        <translation>Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Progeny of a cross</source>
        <translation>Nachkommen einer Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Progeny of one cross or one plant, kept together.</source>
        <translation>Nachkommen einer Kreuzung oder einer Pflanze, gemeinsam geführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Progeny of {}</source>
        <translation>Nachkommen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>Progeny of {}: {}</source>
        <translation>Nachkommen von {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Progeny on parents</source>
        <translation>Nachkommen gegen Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Progeny recorded</source>
        <translation>Aufgezeichnete Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Progeny, {}</source>
        <translation>Nachkommen, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>Progeny: {}</source>
        <translation>Nachkommen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Protected</source>
        <translation>Geschützt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Protected parents</source>
        <translation>Geschützte Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Pull out the index</source>
        <translation>Index herausziehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Put &amp;another plant in its place</source>
        <translation>Eine andere &amp;Pflanze an ihre Stelle setzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Put &amp;before their code</source>
        <translation>&amp;Vor ihren Code setzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>Put all picked plants back (Esc)</source>
        <translation>Auswahl aller Pflanzen aufheben (Esc)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Put be&amp;hind their code</source>
        <translation>&amp;Hinter ihren Code setzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Put it in its place</source>
        <translation>An ihre Stelle setzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>Put it into the folder's 'photos'.</source>
        <translation>In den Unterordner „photos“ legen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/legend_panel.py"/>
        <source>Put the key away</source>
        <translation>Legende ausblenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>Put the pair away</source>
        <translation>Paar ausblenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Put the trial cross away</source>
        <translation>Probekreuzung ausblenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/strips.py"/>
        <source>Put these cautions away</source>
        <translation>Diese Warnhinweise ausblenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>QR code of the record</source>
        <translation>QR-Code der Aufzeichnung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/quick.py"/>
        <source>Quick line</source>
        <translation>Schnellzeile</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>R = {} / √({} × {}) = {}</source>
        <translation>R = {} / √({} × {}) = {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>R = θ(a, b) / √(θ(a, a) · θ(b, b))</source>
        <translation>R = θ(a, b) / √(θ(a, a) · θ(b, b))</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Raise plants …</source>
        <translation>Pflanzen heranziehen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Raised</source>
        <translation>Herangezogen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Raised from cross</source>
        <translation>Herangezogen aus Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Ratio</source>
        <translation>Spaltungsverhältnis</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Ratio of the parents</source>
        <translation>Verhältnis der Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Ratios tried</source>
        <translation>Geprüfte Spaltungsverhältnisse</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Reading every row …</source>
        <translation>Jede Zeile wird gelesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Reading the rows …</source>
        <translation>Zeilen werden gelesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Reading {} …</source>
        <translation>{} wird gelesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>Reading …</source>
        <translation>Wird gelesen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Realised heritability = response / selection differential</source>
        <translation>Realisierte Heritabilität = Selektionserfolg / Selektionsdifferenz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Recent</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Reciprocal cross</source>
        <translation>Reziproke Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Reciprocal pairs</source>
        <translation>Reziproke Paare</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Reciprocals</source>
        <translation>Reziproke</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/form.py"/>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>Record</source>
        <translation>Aufzeichnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Record the sheet</source>
        <translation>Blatt aufzeichnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/form.py"/>
        <source>Record, and next</source>
        <translation>Aufzeichnen, weiter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>Recorded already, the other way: {}.</source>
        <translation>Schon aufgezeichnet, in der anderen Richtung: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>Recorded already, this way: {}.</source>
        <translation>Schon aufgezeichnet, in dieser Richtung: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/form.py"/>
        <source>Recorded: {}</source>
        <translation>Aufgezeichnet: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Records of the table</source>
        <translation>Aufzeichnungen der Tabelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Records that cannot be true together</source>
        <translation>Aufzeichnungen, die nicht zusammen stimmen können</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Recurrent parent</source>
        <translation>Rekurrenter Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>Relatedness</source>
        <translation>Verwandtschaft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <location filename="../../pedigreeview/window/relatedness_pair.py"/>
        <source>Relationship</source>
        <translation>Verwandtschaftsgrad</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Relationship R</source>
        <translation>Verwandtschaftsgrad R</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <source>Relatives</source>
        <translation>Verwandte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Reliability</source>
        <translation>Zuverlässigkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Report on thi&amp;s plant …</source>
        <translation>Bericht über diese P&amp;flanze …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Report on {}</source>
        <translation>Bericht über {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>Rescue</source>
        <translation>Retten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>Rescue what can be read of {}</source>
        <translation>Lesbares aus {} retten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>Rescue what can be read …</source>
        <translation>Lesbares retten …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Response to selection</source>
        <translation>Selektionserfolg</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Response {}, the chosen stood {} from their family.</source>
        <translation>Erfolg {}, die Gewählten wichen um {} von ihrer Familie ab.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Roll: {}</source>
        <translation>Rolle: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Row by row, each position counted from the stake.</source>
        <translation>Reihe für Reihe, jede Position vom Pfahl aus gezählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Row kept together</source>
        <translation>Gemeinsam geführte Reihe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>Row of the headings</source>
        <translation>Zeile der Überschriften</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Row stakes</source>
        <translation>Reihenpfähle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/preview_panel.py"/>
        <source>Rows of the file</source>
        <translation>Zeilen der Datei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Rule of plant-variety tests for uniformity (read)</source>
        <translation>Regel der Sortenprüfung für Homogenität (gelesen)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Rules first</source>
        <translation>Regeln zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>S&amp;owing</source>
        <translation>&amp;Aussaat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>S&amp;own</source>
        <translation>&amp;Gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>S&amp;tate</source>
        <translation>Sta&amp;tus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>SVG, a picture that can be made larger</source>
        <translation>SVG, ein Bild, das sich vergrößern lässt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>SVG, for a web page or a drawing program</source>
        <translation>SVG, für Webseite oder Zeichenprogramm</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Same cytoplasm: both seed-parent lines go back to {}.</source>
        <translation>Gleiches Zytoplasma: Beide Samenelter-Linien gehen auf {} zurück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>Same plants</source>
        <translation>Gleiche Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Sampled, as the pedigree is too tangled for an exact answer: {} effective samples, standard error of a chance up to {}. {}</source>
        <translation>Durch Ziehen geschätzt, da der Stammbaum für eine exakte Antwort zu verschlungen ist: {} effektive Ziehungen, Standardfehler einer Wahrscheinlichkeit bis {}. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Save a &amp;copy …</source>
        <translation>&amp;Kopie speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <source>Save a copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>Save a copy …</source>
        <translation>Kopie speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Save as</source>
        <translation>Speichern unter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Save as HTML …</source>
        <translation>Als HTML speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Save as PDF …</source>
        <translation>Als PDF speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Save in another for&amp;m …</source>
        <translation>In anderer For&amp;m speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <source>Save the copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Save the pict&amp;ure …</source>
        <translation>Das Bild &amp;speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Save the picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Save the picture as</source>
        <translation>Bild speichern als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>Save the relatedness</source>
        <translation>Verwandtschaft speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>Save the relatedness as</source>
        <translation>Verwandtschaft speichern als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Save the report</source>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Save the table or the picture</source>
        <translation>Tabelle oder Bild speichern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Save …</source>
        <translation>Speichern …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Saved a copy as {}</source>
        <translation>Kopie gespeichert als {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <source>Saved as {}</source>
        <translation>Gespeichert als {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>Saved {}</source>
        <translation>{} gespeichert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/asides.py"/>
        <source>Saved {} at {}</source>
        <translation>{} um {} gespeichert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>Say how many genes are wanted.</source>
        <translation>Angeben, wie viele Gene gewünscht sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Say the day on which the plants are in flower.</source>
        <translation>Den Tag angeben, an dem die Pflanzen blühen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>Say what each column means. What was guessed is proposed with its reason; your answers are remembered for the next table with these headings.</source>
        <translation>Angeben, was jede Spalte bedeutet. Vermutetes ist mit Begründung vorgeschlagen; die Antworten gelten auch für die nächste Tabelle mit diesen Überschriften.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>Say where the headings stand. A double click on a row below, or Enter, takes it for the headings; rows above it are not read.</source>
        <translation>Angeben, wo die Überschriften stehen. Doppelklick auf eine Zeile unten, oder Eingabe, nimmt sie als Überschriften; Zeilen darüber werden nicht gelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>Say where to write it.</source>
        <translation>Angeben, wohin geschrieben wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Say which file is to be written.</source>
        <translation>Angeben, welche Datei zu schreiben ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Scheme</source>
        <translation>Schema</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Schemes without selection on the way, cheapest first</source>
        <translation>Schemata ohne Auslese unterwegs, das günstigste zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Score sheet</source>
        <translation>Boniturblatt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Score {:.3f}, from these parts</source>
        <translation>Wertung {:.3f}, aus diesen Teilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Scores</source>
        <translation>Bonituren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Scores of plants by traits</source>
        <translation>Bonituren von Pflanzen nach Merkmalen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>Second of the pair</source>
        <translation>Zweite Pflanze des Paars</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>Second picture, beside the first</source>
        <translation>Zweites Bild, neben dem ersten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Seed &amp;of</source>
        <translation>Samen &amp;von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Seed across borders</source>
        <translation>Samen über Grenzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Seed packet</source>
        <translation>Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Seed packet bought or given …</source>
        <translation>Samentüte gekauft oder erhalten …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Seed packets</source>
        <translation>Samentüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>Seed parent</source>
        <translation>Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Seed parent first, in the direction that is proposed</source>
        <translation>Samenelter zuerst, in der vorgeschlagenen Richtung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Seed parent of a pair to weigh</source>
        <translation>Samenelter eines zu gewichtenden Paars</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Seed parent ♀</source>
        <translation>Samenelter ♀</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Seed parents in rows, pollen parents in columns, and how far each cross is.</source>
        <translation>Samenelter in Zeilen, Pollenelter in Spalten, und wie weit jede Kreuzung ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Seed sent to another country needs papers, in a letter too.</source>
        <translation>Samen in ein anderes Land braucht Papiere, auch im Brief.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Seed that was bought or given. Harvested seed gets its packet by itself.</source>
        <translation>Gekaufter oder erhaltener Samen. Geernteter Samen bekommt seine Samentüte von selbst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Seed&amp;lings …</source>
        <translation>Sä&amp;mlinge …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>Seed-true lines</source>
        <translation>Samenfeste Linien</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Seedlings</source>
        <translation>Sämlinge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Seedlings up</source>
        <translation>Aufgelaufene Sämlinge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Seeds &amp;left</source>
        <translation>Samen ü&amp;brig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>Seeds a fruit</source>
        <translation>Samen je Frucht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Seeds in the packet &amp;before</source>
        <translation>Samen in der Tüte &amp;vorher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Seeds that come up</source>
        <translation>Keimende Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Seeds to sow</source>
        <translation>Zu säende Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Seen and expected counts</source>
        <translation>Gesehene und erwartete Zahlen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Seen {}; expected {}.</source>
        <translation>Gesehen {}; erwartet {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Segregating by sib mating</source>
        <translation>Aufspaltend bei Geschwisterpaarung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>Segregation</source>
        <translation>Aufspaltung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>Selection</source>
        <translation>Auslese</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>Selection from a plant</source>
        <translation>Auslese aus einer Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Self it ⊗ …</source>
        <translation>Selbsten ⊗ …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Selfed</source>
        <translation>Geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>Selfed on until they breed true, as most peas, beans, tomatoes and lettuces from a packet. Each founder counts as breeding true (fixation 1), and all its plants as alike.</source>
        <translation>Weiter geselbstet bis reinerbig, wie die meisten Erbsen, Bohnen, Tomaten und Salate aus der Samentüte. Jeder Gründer zählt als reinerbig (Fixierung 1), und alle seine Pflanzen als gleich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Selfed once more, with no plant recorded in between.</source>
        <translation>Noch einmal geselbstet, ohne aufgezeichnete Pflanze dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>Selfed {} times more, with no plants recorded in between.</source>
        <translation>Noch {} Mal geselbstet, ohne aufgezeichnete Pflanzen dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Selfing</source>
        <translation>Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Selfings</source>
        <translation>Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Selfings &amp;expected</source>
        <translation>&amp;Erwartete Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Selfings in &amp;between, not recorded</source>
        <translation>Selbstungen da&amp;zwischen, nicht aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>Selfs or hybrids</source>
        <translation>Selbstungen oder Hybriden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Selfs show themselves</source>
        <translation>Selbstungen erkennbar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>Sent to {}: {}</source>
        <translation>Gesendet an {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Several crosses together</source>
        <translation>Mehrere Kreuzungen zusammen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Share of a founder</source>
        <translation>Anteil eines Gründers</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Share of any one founder at most</source>
        <translation>Anteil eines einzelnen Gründers höchstens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Share of off-types that would be put up with</source>
        <translation>Anteil geduldeter Abweicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>Sheet and headings</source>
        <translation>Blatt und Überschriften</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Sheet {} is recorded: {}.</source>
        <translation>Blatt {} ist aufgezeichnet: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Sheets that were printed, the last one first</source>
        <translation>Gedruckte Blätter, das letzte zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Shift+Up</source>
        <translation>Umschalt+Hoch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Shift+click, Shift+drag</source>
        <translation>Umschalt+Klick, Umschalt+Ziehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Show all its descendants</source>
        <translation>Alle ihre Nachkommen zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Show all: {}</source>
        <translation>Alle zeigen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Show every plant again</source>
        <translation>Wieder jede Pflanze zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Show in the picture</source>
        <translation>Im Bild zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Show in the picture: {}</source>
        <translation>Im Bild zeigen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Show in the records: {}</source>
        <translation>In den Aufzeichnungen zeigen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Show rows that hold a text</source>
        <translation>Zeilen zeigen, die einen Text enthalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Show rows that hold …</source>
        <translation>Zeilen mit Text …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Show the marked plant in focus</source>
        <translation>Die markierte Pflanze im Fokus zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Show the neighbourhood</source>
        <translation>Umgebung zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Show the record</source>
        <translation>Aufzeichnung zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Show the whole book</source>
        <translation>Ganzes Buch zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Show the whole book, or the focus again</source>
        <translation>Das ganze Buch zeigen, oder wieder den Fokus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Show them</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Show {} in the picture</source>
        <translation>{} im Bild zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Show {} more</source>
        <translation>{} weitere zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Sideways</source>
        <translation>Quer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Signs and keys</source>
        <translation>Zeichen und Tasten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/legend_panel.py"/>
        <source>Signs: {}</source>
        <translation>Zeichen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Single plants of the crosses; accidental selfs and pools left out.</source>
        <translation>Einzelne Pflanzen der Kreuzungen; ungewollte Selbstungen und Pools ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>Size of the &amp;text</source>
        <translation>&amp;Schriftgröße</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Skip it</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Slope of the means of families on their parents, weighted by their plants</source>
        <translation>Steigung der Familienmittel gegen ihre Eltern, gewichtet nach ihren Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Smaller squares (−)</source>
        <translation>Kleinere Felder (−)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>So many founders with equal shares would be as evenly used (1/Σp²): {}.</source>
        <translation>So viele Gründer mit gleichen Anteilen wären ebenso gleichmäßig genutzt (1/Σp²): {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>So many genes that hang together cannot be followed.</source>
        <translation>So viele zusammenhängende Gene lassen sich nicht verfolgen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>So many unrelated plants that are not inbred would hold as much; also the founder genome equivalents by mean coancestry, 1/(2 · mean coancestry).</source>
        <translation>So viele nicht verwandte, nicht ingezüchtete Pflanzen enthielten ebenso viel; auch die Gründergenom-Äquivalente nach mittlerer Verwandtschaft θ, 1/(2 · mittlere Verwandtschaft θ).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>So the backcross (A × B) × A has F = {}, and a seedling of A selfed has F = {}.</source>
        <translation>Die Rückkreuzung (A × B) × A hat also F = {}, und ein geselbsteter Sämling von A hat F = {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Sow</source>
        <translation>Säen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Sow …</source>
        <translation>Säen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Sowing</source>
        <translation>Aussaat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Sowing {} is in the book.</source>
        <translation>Aussaat {} steht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Sowings</source>
        <translation>Aussaaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>Sown</source>
        <translation>Gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Sown in or after</source>
        <translation>Gesät ab Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>Sown in or before</source>
        <translation>Gesät bis Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Space, Ctrl+A, Esc</source>
        <translation>Leertaste, Strg+A, Esc</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>Spellings</source>
        <translation>Schreibweisen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Spread (one standard deviation): {} and {}.</source>
        <translation>Streuung (eine Standardabweichung): {} und {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>Stable line?</source>
        <translation>Stabile Linie?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Stake …</source>
        <translation>Pfahl …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Standard probability; Mendel's rule of inheritance</source>
        <translation>Elementare Wahrscheinlichkeitsrechnung; Mendels Vererbungsregeln</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Start a new book …</source>
        <translation>Neues Buch beginnen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>Start the book</source>
        <translation>Buch beginnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Status</source>
        <translation>Status</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Status number</source>
        <translation>Statuszahl</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>Steps, the newest first</source>
        <translation>Schritte, der neueste zuerst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Still segregates for</source>
        <translation>Spaltet noch auf für</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Still segregating</source>
        <translation>Noch aufspaltend</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Stopped; nothing has come in.</source>
        <translation>Angehalten; nichts wurde eingelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Such as: this one is plainly a selfing. It holds for these plants alone.</source>
        <translation>Etwa: Diese ist eindeutig eine Selbstung. Gilt nur für diese Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Sweet pea</source>
        <translation>Duftwicke</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>T&amp;hese plants</source>
        <translation>&amp;Diese Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>TP: 0.8; self: 0.2 – blank leaves them</source>
        <translation>TP: 0.8; self: 0.2 – leer: unverändert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_page.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>Tables ({})</source>
        <translation>Tabellen ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Tables and books ({})</source>
        <translation>Tabellen und Bücher ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>Tables and other files with plants ({})</source>
        <translation>Tabellen und andere Dateien mit Pflanzen ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Tables of the book</source>
        <translation>Tabellen des Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>Tags and lists</source>
        <translation>Etiketten und Listen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Tags for flowers</source>
        <translation>Etiketten für Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>Tags for fruits</source>
        <translation>Etiketten für Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Take</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>Take &amp;all as proposed</source>
        <translation>Alle &amp;Vorschläge übernehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>Take out pin {}, {}</source>
        <translation>Nadel {} lösen, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>Take out the wish {}</source>
        <translation>Wunsch {} entfernen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_notes.py"/>
        <source>Take the dashed tag out of the picture</source>
        <translation>Das gestrichelte Etikett aus dem Bild nehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>Take the odds that the buds propose: itself {}</source>
        <translation>Die Wahrscheinlichkeit übernehmen, die die Knospen nahelegen: Selbstung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Take the pin of {} out</source>
        <translation>Nadel von {} lösen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Take the pin out</source>
        <translation>Nadel lösen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Take {} out of this list</source>
        <translation>{} aus dieser Liste nehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Take: {} of {} flowers where {} bears the seed, {} of {} where {} does</source>
        <translation>Ansatz: {} von {} Blüten, wenn {} den Samen trägt, {} von {}, wenn {} ihn trägt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Takes</source>
        <translation>Ansatzraten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Takes by group</source>
        <translation>Ansatzraten nach Gruppe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Tasting</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Text of the note</source>
        <translation>Text der Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>That &amp;plant</source>
        <translation>J&amp;ene Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>That did not work</source>
        <translation>Das ging nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>That is more than the {} allowed where 1% is tolerated.</source>
        <translation>Das sind mehr als die {}, die bei 1% Toleranz erlaubt sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>That is the book that lies open. Choose another name.</source>
        <translation>Das ist das Buch, das offen liegt. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>That name is kept for the last pins. Choose another one.</source>
        <translation>Dieser Name ist den letzten Nadeln vorbehalten. Einen anderen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>That pollen is {} days old.</source>
        <translation>Dieser Pollen ist {} Tage alt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>The &amp;neighbourhood</source>
        <translation>&amp;Umgebung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>The &amp;other direction was worked as well ⇄</source>
        <translation>&amp;Andere Richtung ebenfalls bestäubt ⇄</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>The backup is in its place.</source>
        <translation>Die Sicherung ist an ihrem Platz.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>The backup is made.</source>
        <translation>Die Sicherung ist erstellt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>The bed holds</source>
        <translation>Das Beet fasst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>The block reaches beyond the sheet. Start further up or left.</source>
        <translation>Der Block reicht über das Blatt hinaus. Weiter oben oder links beginnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>The book can be read here, and copied.</source>
        <translation>Das Buch ist hier lesbar und lässt sich kopieren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>The book has no genes. Write one down: Write, Gene …</source>
        <translation>Das Buch hat keine Gene. Eines aufzeichnen: Schreiben, Gen …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>The book has no traits.</source>
        <translation>Das Buch hat keine Merkmale.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>The book is there again.</source>
        <translation>Das Buch ist wieder da.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>The book will be as it was on {}. The damaged file is kept beside the backups.</source>
        <translation>Das Buch wird sein, wie es am {} war. Die beschädigte Datei bleibt neben den Sicherungen erhalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>The book will be as it was on {}. What is in it now becomes a backup first, so nothing is lost.</source>
        <translation>Das Buch wird sein, wie es am {} war. Sein jetziger Inhalt wird zuerst gesichert; nichts geht verloren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>The book {} lies open. The file can take its place in the window, or its plants and crosses can come into that book; you see first what would come in.</source>
        <translation>Das Buch {} liegt offen. Die Datei kann im Fenster an seine Stelle treten, oder ihre Pflanzen und Kreuzungen kommen in dieses Buch; was hereinkäme, ist vorher zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>The bud was &amp;still closed</source>
        <translation>Knospe noch ge&amp;schlossen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>The chance that an accidental self of the seed parent can be seen in a seedling.</source>
        <translation>Die Wahrscheinlichkeit, dass eine ungewollte Selbstung des Samenelters an einem Sämling zu sehen ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>The chance that one allele drawn from each is a copy of one and the same founder allele.</source>
        <translation>Die Wahrscheinlichkeit, dass je ein aus beiden gezogenes Allel Kopie ein und desselben Gründerallels ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The chance that the two alleles of a plant at one gene came down from the same allele of a founder. 0 for a plant of unrelated parents, 1 for a pure line.</source>
        <translation>Die Wahrscheinlichkeit, dass die beiden Allele einer Pflanze an einem Gen vom selben Allel eines Gründers stammen. 0 bei einer Pflanze aus nicht verwandten Eltern, 1 bei einer reinen Linie.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>The cheapest road, keeping plants in every generation</source>
        <translation>Der günstigste Weg, der in jeder Generation Pflanzen behält</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>The code stands on tags and packets too. Every place in the book that names it changes with it; what is printed does not.</source>
        <translation>Der Code steht auch auf Etiketten und Samentüten. Jede Stelle im Buch, die ihn nennt, ändert sich mit; Gedrucktes nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <source>The copy holds everything: records, photos, and what can be undone.</source>
        <translation>Die Kopie enthält alles: Aufzeichnungen, Fotos und was sich rückgängig machen lässt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>The cross itself gets them and keeps its code.</source>
        <translation>Die Kreuzung selbst bekommt sie und behält ihren Code.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>The cross that is marked</source>
        <translation>Die markierte Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>The damaged file stays as it is. Every record that can be read goes into a new book; what cannot is listed here.</source>
        <translation>Die beschädigte Datei bleibt, wie sie ist. Jede lesbare Aufzeichnung kommt in ein neues Buch; was nicht lesbar ist, steht hier.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>The difference lies likely between {} and {} points.</source>
        <translation>Der Unterschied liegt wahrscheinlich zwischen {} und {} Punkten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>The donor piece that stays around a gene at {:g} cM of a chromosome of {:g} cM, when each backcross keeps only the gene.</source>
        <translation>Das Donorstück, das um ein Gen bei {:g} cM eines Chromosoms von {:g} cM bleibt, wenn bei jeder Rückkreuzung nur auf das Gen ausgelesen wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/preview_panel.py"/>
        <source>The file</source>
        <translation>Die Datei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>The file cannot be read: {}.</source>
        <translation>Die Datei ist nicht lesbar: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>The file of this photo is not there.</source>
        <translation>Die Datei dieses Fotos fehlt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>The genotypes of the parents are not known, or give no single ratio for all of these plants; so the named ratios are tried below.</source>
        <translation>Die Genotypen der Eltern sind unbekannt oder ergeben kein einheitliches Spaltungsverhältnis für alle diese Pflanzen; darum werden unten die benannten Spaltungsverhältnisse geprüft.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <source>The language changes when the program is started again.</source>
        <translation>Die Sprache wechselt beim nächsten Start des Programms.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>The line in the middle is a spread as large as that of plants which are alike by descent: founder lines and their F1. Interval by the F distribution, 95%.</source>
        <translation>Die Linie in der Mitte ist eine Streuung so groß wie die von Pflanzen, die durch Abstammung gleich sind: Gründerlinien und ihre F1. Intervall nach der F-Verteilung, 95%.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>The line keeps its parents; from here on it counts as a variety of its own.</source>
        <translation>Die Linie behält ihre Eltern; von hier an zählt sie als eigene Sorte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>The mean of both over all wishes.</source>
        <translation>Das Mittel beider über alle Wünsche.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>The new book</source>
        <translation>Das neue Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>The new book is made: {}</source>
        <translation>Das neue Buch ist erstellt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>The newer version</source>
        <translation>Die neuere Version</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/pages_preview.py"/>
        <source>The next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>The next two weeks</source>
        <translation>Die nächsten zwei Wochen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The numbers</source>
        <translation>Die Zahlen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>The numbers of {} cannot be given until {}</source>
        <translation>Die Zahlen von {} lassen sich erst angeben, wenn {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>The other book holds nothing that yours does not.</source>
        <translation>Das andere Buch hat nichts, was deines nicht hat.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/pages_preview.py"/>
        <source>The page before</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>The pair was crossed in neither direction.</source>
        <translation>Das Paar wurde in keiner Richtung gekreuzt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>The parentage as text</source>
        <translation>Die Abstammung als Text</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/notation_dialog.py"/>
        <source>The parentage of {}</source>
        <translation>Die Abstammung von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>The parents are taken to breed true at every gene asked about.</source>
        <translation>Die Eltern gelten an jedem gefragten Gen als reinerbig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The part of a plant's heredity that a founder gave.</source>
        <translation>Der Teil des Erbguts einer Pflanze, den ein Gründer gab.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>The part of its alleles that is expected from each founder: a seed parent and a pollen parent pass on ½ of their own shares each, generation by generation; chance moves the real part of one plant around it.</source>
        <translation>Der Teil ihrer Allele, der von jedem Gründer zu erwarten ist: Samenelter und Pollenelter vererben je ½ ihrer eigenen Anteile, Generation für Generation; der Zufall verschiebt den wirklichen Teil einer einzelnen Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>The photo</source>
        <translation>Das Foto</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>The picked plants</source>
        <translation>Die ausgewählten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>The picked plants: {}</source>
        <translation>Die ausgewählten Pflanzen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/copying.py"/>
        <source>The picture is on the clipboard.</source>
        <translation>Das Bild liegt in der Zwischenablage.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>The picture to click through</source>
        <translation>Das Bild zum Durchklicken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>The pollen &amp;came from</source>
        <translation>Der Pollen &amp;kam von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>The ratio: {}. Genes unlinked; every class lives equally well.</source>
        <translation>Das Spaltungsverhältnis: {}. Gene ungekoppelt; jede Klasse überlebt gleich gut.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>The records contradict each other. Mend what is named below first, or allow for plants that were misread.</source>
        <translation>Die Aufzeichnungen widersprechen sich. Zuerst abhelfen, was unten genannt ist, oder falsch erkannte Pflanzen zulassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/report_view.py"/>
        <source>The report is on the clipboard.</source>
        <translation>Der Bericht ist in der Zwischenablage.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The rules of your place come before anything here, then licensed advice.</source>
        <translation>Die Regeln vor Ort gehen allem hier vor, danach anerkannte Fachberatung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>The rules of your place come first, then licensed advice.</source>
        <translation>Die Regeln vor Ort gehen vor, danach anerkannte Fachberatung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The same chance for one allele drawn from each of two plants. It is the F that their progeny would have.</source>
        <translation>Dieselbe Wahrscheinlichkeit für je ein Allel aus zwei Pflanzen. Sie ist das F, das ihre Nachkommen hätten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>The same product, drawn family by family (Gibbs sampling in blocks)</source>
        <translation>Dasselbe Produkt, familienweise gezogen (Gibbs-Sampling in Blöcken)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The same two parents with roles exchanged: same coancestry, other cytoplasm, other seed coat and early vigour.</source>
        <translation>Dieselben zwei Eltern mit vertauschten Rollen: gleiche Verwandtschaft θ, anderes Zytoplasma, andere Samenschale und anderer Jugendwuchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>The same two parents with the roles exchanged.</source>
        <translation>Dieselben zwei Eltern mit vertauschten Rollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>The seed goes &amp;into</source>
        <translation>Der Samen kommt &amp;in</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The seed is poisonous. Mark its packets.</source>
        <translation>Der Samen ist giftig. Seine Samentüten kennzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>The sheet, row by row as it was printed</source>
        <translation>Das Blatt, Zeile für Zeile wie gedruckt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>The spread is that of one chromosome of {:,.0f} cM, as set above.</source>
        <translation>Die Streuung ist die eines Chromosoms von {:,.0f} cM, wie oben eingestellt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>The table above, the pair below</source>
        <translation>Oben die Tabelle, unten das Paar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/bring_in_step.py"/>
        <source>The table is large: a backup of the book is made first, so that you can go back to it.</source>
        <translation>Die Tabelle ist groß: Zuerst wird eine Sicherung des Buchs erstellt, um zu ihr zurückkehren zu können.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>The table on show: {}</source>
        <translation>Die gezeigte Tabelle: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_picture.py"/>
        <source>The two directions of the pair</source>
        <translation>Die beiden Richtungen des Paars</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>The usual agent is a deadly poison; this program gives no recipe.</source>
        <translation>Das übliche Mittel ist ein tödliches Gift; dieses Programm gibt kein Rezept.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>The wanted plant shall breed true</source>
        <translation>Die gewünschte Pflanze soll reinerbig sein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>The whole book</source>
        <translation>Das ganze Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>The whole book at once</source>
        <translation>Das ganze Buch auf einmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>The wishes at the side, by their genes</source>
        <translation>Die Wünsche an der Seite, nach ihren Genen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Their coancestry set against how alike each is to itself; 1 is the same.</source>
        <translation>Ihre Verwandtschaft θ, bezogen darauf, wie gleich jeder sich selbst ist; 1 heißt gleich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>Their code</source>
        <translation>Ihr Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Their crosses, seed, scores and notes go as well.</source>
        <translation>Ihre Kreuzungen, Samen, Bonituren und Notizen gehen mit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Their parents cannot give {}: foreign pollen, a volunteer, a misread plant or a mixed-up label. They are not counted.</source>
        <translation>Ihre Eltern können {} nicht ergeben: Fremdpollen, Durchwuchs, eine falsch erkannte Pflanze oder ein vertauschtes Etikett. Sie zählen nicht mit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>Theirs</source>
        <translation>Fremde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/backups_dialog.py"/>
        <source>There is no backup yet.</source>
        <translation>Noch keine Sicherung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>These codes look alike. Each stays a plant of its own unless you say that they are one.</source>
        <translation>Diese Codes sehen ähnlich aus. Jeder bleibt eine eigene Pflanze, solange sie nicht für eine erklärt werden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>They are</source>
        <translation>Sie sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>They are no better than the records and the base they rest on. A wrong parent makes wrong numbers, and nothing here is advice on what to eat or sell.</source>
        <translation>Sie sind nicht besser als die Aufzeichnungen und die Basis, auf denen sie beruhen. Ein falscher Elter macht falsche Zahlen, und nichts hier ist ein Rat, was zu essen oder zu verkaufen ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>They are probably no codes. Each is asked once for the whole table.</source>
        <translation>Sie sind wohl keine Codes. Jede wird einmal für die ganze Tabelle abgefragt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>They came from another &amp;cross</source>
        <translation>Sie stammen aus einer anderen &amp;Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>They flower together, where it is recorded</source>
        <translation>Sie blühen gemeinsam, soweit aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>They get the codes {} to {}.</source>
        <translation>Sie bekommen die Codes {} bis {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>They have another &amp;parent</source>
        <translation>Sie haben einen anderen &amp;Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>They would be of {}.</source>
        <translation>Sie wären aus {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>This book can only be read.</source>
        <translation>Dieses Buch ist nur lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>This book has no traits and no genes yet. Add a trait (Records, Traits) and score plants, and what you want can be weighed here.</source>
        <translation>Dieses Buch hat noch keine Merkmale und keine Gene. Ein Merkmal hinzufügen (Aufzeichnungen, Merkmale) und Pflanzen bonitieren; dann lässt sich hier gewichten, was gewünscht ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>This book is only read, so it keeps no garden sheets. Keep it as a book, print a sheet, and type it in here by its number.</source>
        <translation>Dieses Buch wird nur gelesen und behält daher keine Gartenblätter. Als Buch speichern, ein Blatt drucken und es hier über seine Nummer eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>This is proved: the bound is {:.4f} and the gap to it is 0.</source>
        <translation>Das ist bewiesen: Die Schranke ist {:.4f}, und die Lücke zu ihr ist 0.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>This is right …</source>
        <translation>Das ist richtig …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/copying.py"/>
        <source>This page shows no table to copy.</source>
        <translation>Diese Seite zeigt keine Tabelle zum Kopieren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>This pair</source>
        <translation>Dieses Paar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>This plant's own finding overrides what its cross says.</source>
        <translation>Der eigene Befund dieser Pflanze geht vor dem, was ihre Kreuzung sagt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <source>This program came without printing; save a PDF and print that.</source>
        <translation>Dieses Programm kam ohne Druckfunktion; ein PDF speichern und dieses drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>This setting was changed in another window meanwhile.</source>
        <translation>Diese Einstellung wurde inzwischen in einem anderen Fenster geändert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Time of flo&amp;wering …</source>
        <translation>Blüte&amp;zeit …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>Time of flowering</source>
        <translation>Blütezeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Times of flowering</source>
        <translation>Blütezeiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Tint and filter</source>
        <translation>Tönung und Filter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Tint plants by</source>
        <translation>Pflanzen tönen nach</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Tint plants by a number or a trait; fade or fold away what does not fit</source>
        <translation>Pflanzen nach einer Zahl oder einem Merkmal tönen; Unpassendes verblassen lassen oder einklappen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>Tint: {}.</source>
        <translation>Tönung: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>To do</source>
        <translation>Zu tun</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>To trust that fewer than {}% are, look at {} plants and see none.</source>
        <translation>Um sicher zu sein, dass es weniger als {}% sind: {} Pflanzen ansehen und keinen finden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Together in flower</source>
        <translation>Gemeinsam in Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>Tomato: a leaf brought over by backcrossing, with doubtful pollen and one planted error for the checks to find.</source>
        <translation>Tomate: ein Blatttyp, durch Rückkreuzung übertragen, mit zweifelhaftem Pollen und einem absichtlichen Fehler für die Prüfungen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Too few flowers to tell.</source>
        <translation>Zu wenige Blüten, um es zu sagen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Too few plants to compare</source>
        <translation>Zu wenige Pflanzen für einen Vergleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Too few to tell from {}</source>
        <translation>Zu wenige, um von {} zu unterscheiden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Took</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>Trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>Trait or gene that is wanted</source>
        <translation>Gewünschtes Merkmal oder Gen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Trait …</source>
        <translation>Merkmal …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Traits</source>
        <translation>Merkmale</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Traits of the progeny</source>
        <translation>Merkmale der Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Traits shown</source>
        <translation>Gezeigte Merkmale</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Traits to score</source>
        <translation>Zu bonitierende Merkmale</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Traits ▾</source>
        <translation>Merkmale ▾</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Try it in the picture</source>
        <translation>Im Bild ausprobieren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Turn the direction</source>
        <translation>Richtung umkehren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>Two parents are needed.</source>
        <translation>Zwei Eltern sind nötig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Two plants or more of one cross are scored for a trait in words, such as tall or dwarf; then they are counted here. Measured traits are judged under Selection.</source>
        <translation>Zwei oder mehr Pflanzen einer Kreuzung sind in einem Merkmal mit Worten bonitiert, wie hoch oder zwergig; dann werden sie hier gezählt. Gemessene Merkmale werden unter Auslese beurteilt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>Type 1/8, 0.125 or 12.5%, or leave it blank for no limit.</source>
        <translation>1/8, 0.125 oder 12.5% eintippen, oder leer lassen für keine Grenze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>Type a number such as 12 or 0.5.</source>
        <translation>Eine Zahl wie 12 oder 0.5 eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>Type a whole number.</source>
        <translation>Eine ganze Zahl eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <source>Type digits alone, or leave it blank if it is not known.</source>
        <translation>Nur Ziffern eintippen, oder leer lassen, wenn unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>Type into a cell to change it; Tab goes on. Rows from a spreadsheet can be pasted over the cells from the marked one on.</source>
        <translation>In eine Zelle tippen, um sie zu ändern; Tab geht weiter. Zeilen aus einer Tabellenkalkulation lassen sich ab der markierten Zelle einfügen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>Type one of: {}.</source>
        <translation>Eines davon eintippen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Type the code of a plant of this book.</source>
        <translation>Den Code einer Pflanze dieses Buchs eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Type the codes of two plants or more, with commas between them.</source>
        <translation>Die Codes von zwei oder mehr Pflanzen eintippen, durch Kommas getrennt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>Type their codes above.</source>
        <translation>Oben ihre Codes eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Type their number.</source>
        <translation>Ihre Anzahl eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/quick.py"/>
        <source>Type what was done in one line; below it stands what is understood.</source>
        <translation>In einer Zeile eintippen, was getan wurde; darunter steht, was verstanden wurde.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>Type where the marked plant goes (M)</source>
        <translation>Eintippen, wohin die markierte Pflanze kommt (M)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>Type yes or no.</source>
        <translation>Ja oder nein eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_undo.py"/>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>Undo brings it back.</source>
        <translation>Rückgängig holt es zurück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>Undone: {}</source>
        <translation>Rückgängig gemacht: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Unfold more of its relatives</source>
        <translation>Weitere ihrer Verwandten ausklappen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>Unknown is the part that came through parents that nobody recorded: {}.</source>
        <translation>Unbekannt ist der Teil, der durch Eltern kam, die niemand aufgezeichnet hat: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Unlikely, or changes numbers</source>
        <translation>Unwahrscheinlich, oder ändert Zahlen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>Unpin</source>
        <translation>Nadel lösen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Until then</source>
        <translation>Bis dahin</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Up to {}% may still be off-types (95% bound).</source>
        <translation>Bis zu {}% können noch Abweicher sein (95%-Schranke).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>Use this</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>Usual weights</source>
        <translation>Übliche Gewichte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>Value that is wanted</source>
        <translation>Gewünschter Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Variety</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>Variety from elsewhere</source>
        <translation>Sorte von außerhalb</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Version {} of the program.</source>
        <translation>Version {} des Programms.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pedigree_page.py"/>
        <source>Visited:</source>
        <translation>Besucht:</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Wanted alleles of them at least</source>
        <translation>Davon gewünschte Allele mindestens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Wanted in one plant</source>
        <translation>In einer Pflanze gewünscht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Wanted in one plant: {}.</source>
        <translation>In einer Pflanze gewünscht: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>Wanted plants at least</source>
        <translation>Gewünschte Pflanzen mindestens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>Way of the p&amp;aper</source>
        <translation>Papie&amp;rrichtung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Way of the paper</source>
        <translation>Papierrichtung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Weigh this pair</source>
        <translation>Dieses Paar gewichten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>Weighing the pairs …</source>
        <translation>Paare werden gewichtet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>Weighted mean of the parts, 0 to 1</source>
        <translation>Gewichtetes Mittel der Teile, 0 bis 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Welch 1947, Holm 1979 (from memory)</source>
        <translation>Welch 1947, Holm 1979 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_commands.py"/>
        <source>What &amp;came of this</source>
        <translation>Was hieraus &amp;entstand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>What a difference would mean</source>
        <translation>Was ein Unterschied bedeuten würde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>What becomes of plants that do not fit</source>
        <translation>Was mit unpassenden Pflanzen geschieht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>What came of it</source>
        <translation>Was daraus entstand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>What came of {}</source>
        <translation>Was aus {} entstand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>What came over and what was lost</source>
        <translation>Was übernommen wurde und was verloren ging</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>What cannot be carried</source>
        <translation>Was nicht mitgeht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/bring_in_step.py"/>
        <source>What comes into the new book</source>
        <translation>Was ins neue Buch kommt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/bring_in_step.py"/>
        <source>What comes into {}</source>
        <translation>Was in {} kommt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>What comes through the seed parent alone.</source>
        <translation>Was allein durch den Samenelter kommt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>What counts how much</source>
        <translation>Was wie viel zählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>What do these mean under a parent?</source>
        <translation>Was bedeuten diese bei einem Elter?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>What does not fit</source>
        <translation>Was nicht passt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/record_field.py"/>
        <source>What fits</source>
        <translation>Was passt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>What hangs on it goes with it; undo brings all of it back.</source>
        <translation>Was daran hängt, geht mit; Rückgängig holt alles zurück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>What in the records cannot be right</source>
        <translation>Was in den Aufzeichnungen nicht stimmen kann</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>What is due, and the crosses on their way</source>
        <translation>Was fällig ist, und die laufenden Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>What is left by generation</source>
        <translation>Was je Generation bleibt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>What is right</source>
        <translation>Was richtig ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>What is taken for granted</source>
        <translation>Was vorausgesetzt wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>What is to be done</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>What is to be done, and what has become of it.</source>
        <translation>Was zu tun ist, und was daraus geworden ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>What is written</source>
        <translation>Was geschrieben wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/faults_dialog.py"/>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>What it &amp;shows</source>
        <translation>Was es &amp;zeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>What it is for</source>
        <translation>Wofür es ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>What seed it is, borne on which plant, how much of it, and when it grew.</source>
        <translation>Welcher Samen es ist, von welcher Pflanze getragen, wie viel davon und wann gewachsen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>What shall be done with {}?</source>
        <translation>Was soll mit {} geschehen?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>What shows it: {}</source>
        <translation>Was es zeigt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>What the colours of the plants say</source>
        <translation>Was die Farben der Pflanzen sagen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <source>What the heat map shows, in lists</source>
        <translation>Was die Heatmap zeigt, in Listen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <source>What the index lists</source>
        <translation>Was der Index aufführt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>What the numbers rest on</source>
        <translation>Worauf die Zahlen beruhen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>What the photo shows</source>
        <translation>Was das Foto zeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>What the picked plants hold as a group</source>
        <translation>Was die ausgewählten Pflanzen als Gruppe enthalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>What the progeny show.</source>
        <translation>Was die Nachkommen zeigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pages.py"/>
        <source>What the progeny show: ratios, selfs, genes, stable lines</source>
        <translation>Was die Nachkommen zeigen: Spaltungsverhältnisse, Selbstungen, Gene, stabile Linien</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>What the signs of the picture mean</source>
        <translation>Was die Zeichen im Bild bedeuten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>What to cross on a day, in the order in which one walks; typed in afterwards by its number.</source>
        <translation>Was an einem Tag zu kreuzen ist, in der Reihenfolge des Rundgangs; danach über seine Nummer einzutippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>What to judge</source>
        <translation>Was zu beurteilen ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>What to print</source>
        <translation>Was gedruckt wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>What was &amp;seen</source>
        <translation>Was &amp;zu sehen war</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>What was seen</source>
        <translation>Was zu sehen war</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>What was seen &amp;speaks</source>
        <translation>Das Gesehene s&amp;pricht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>What was written before is kept as a dated note of each plant, or as evidence of the cross. All of it is one step that can be undone.</source>
        <translation>Was zuvor geschrieben wurde, bleibt als datierte Notiz jeder Pflanze oder als Beleg der Kreuzung erhalten. Alles zusammen ist ein Schritt, der sich rückgängig machen lässt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>What was written down on paper, typed in by the number of its sheet.</source>
        <translation>Was auf Papier aufgeschrieben wurde, über die Nummer des Blatts eingetippt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>What would change</source>
        <translation>Was sich ändern würde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/bring_in_step.py"/>
        <source>What would come in</source>
        <translation>Was eingelesen würde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>What would give it</source>
        <translation>Was es ergäbe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>When plants are raised from a cross of two parents and scored for a trait in which the parents differ, each plant gets its odds here.</source>
        <translation>Wenn Pflanzen aus einer Kreuzung zweier Eltern herangezogen und in einem Merkmal bonitiert sind, in dem sich die Eltern unterscheiden, bekommt jede Pflanze hier ihre Wahrscheinlichkeit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Where 1% is tolerated with 95% acceptance, {} of {} are allowed.</source>
        <translation>Wo 1% mit 95% Annahmewahrscheinlichkeit geduldet wird, sind {} von {} erlaubt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Where it &amp;lies</source>
        <translation>&amp;Lagerort</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Where plants may be misread, no records contradict each other outright.</source>
        <translation>Wo Pflanzen falsch erkannt sein können, widersprechen sich keine Aufzeichnungen zwingend.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>Where the packet &amp;lies</source>
        <translation>&amp;Lagerort der Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>Where to keep the book</source>
        <translation>Speicherort des Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <source>Where to write</source>
        <translation>Speicherort</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Whether the plant is scored or the seed that it bore</source>
        <translation>Ob die Pflanze bonitiert ist oder der Samen, den sie trug</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Which families and rows breed true, and how many plants it takes to trust it</source>
        <translation>Welche Familien und Reihen reinerbig sind, und wie viele Pflanzen es braucht, um darauf zu vertrauen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Which named ratios fit</source>
        <translation>Welche benannten Spaltungsverhältnisse passen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Which of those that show it breed true</source>
        <translation>Welche von denen, die es zeigen, reinerbig sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>Which plants</source>
        <translation>Welche Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Which plants are listed</source>
        <translation>Welche Pflanzen aufgeführt sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Which plants carry an allele, for sure, likely, or not at all?</source>
        <translation>Welche Pflanzen tragen ein Allel, sicher, wahrscheinlich oder gar nicht?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Which plants of a cross are accidental selfings of the seed parent?</source>
        <translation>Welche Pflanzen einer Kreuzung sind ungewollte Selbstungen des Samenelters?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>Which report</source>
        <translation>Welcher Bericht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Who carries it</source>
        <translation>Wer es trägt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>Who filled it in</source>
        <translation>Wer es ausgefüllt hat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>Who may be which parent was looked at for the best {:,} pairs.</source>
        <translation>Wer welcher Elter sein kann, wurde für die besten {:,} Paare geprüft.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>Who scored</source>
        <translation>Wer bonitierte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>Who sets with whom</source>
        <translation>Wer mit wem ansetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>Who sets with whom …</source>
        <translation>Wer mit wem ansetzt …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>Whole book</source>
        <translation>Ganzes Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>Why then</source>
        <translation>Warum dann</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>Why these coefficients</source>
        <translation>Warum diese Koeffizienten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Why these numbers: {}</source>
        <translation>Warum diese Zahlen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/figure.py"/>
        <source>Why this number: {}</source>
        <translation>Warum diese Zahl: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/figure.py"/>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>Why: {}</source>
        <translation>Warum: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <location filename="../../pedigreeview/window/labels.py"/>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>With 8 values or more on each side a t test with unequal variances; with fewer the values are shared out between the sides in every way.</source>
        <translation>Bei 8 oder mehr Werten auf jeder Seite ein t-Test mit ungleichen Varianzen; bei weniger werden die Werte auf jede mögliche Weise auf die Seiten verteilt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>With these the records could be true</source>
        <translation>Damit könnten die Aufzeichnungen stimmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_table.py"/>
        <source>Withheld and left out: {}.</source>
        <translation>Zurückgehalten und ausgelassen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Without chances, as their records contradict each other: {}.</source>
        <translation>Ohne Wahrscheinlichkeiten, da sich ihre Aufzeichnungen widersprechen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/asides.py"/>
        <source>Words</source>
        <translation>Begriffe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/strips.py"/>
        <source>Work under way</source>
        <translation>Laufende Arbeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>Working out how related the plants are …</source>
        <translation>Verwandtschaft der Pflanzen wird berechnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Working out the breeding values …</source>
        <translation>Zuchtwerte werden berechnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Working out the chances …</source>
        <translation>Wahrscheinlichkeiten werden berechnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/group_panel.py"/>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>Working out the numbers …</source>
        <translation>Zahlen werden berechnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>Working out the plans …</source>
        <translation>Pläne werden berechnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>Working out {} …</source>
        <translation>{} wird berechnet …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>Working with pollen in closed houses can bring on allergy. Air, and a mask.</source>
        <translation>Arbeit mit Pollen in geschlossenen Häusern kann Allergien auslösen. Lüften, und eine Maske.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>Worth knowing</source>
        <translation>Wissenswert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>Wright 1922 (from memory)</source>
        <translation>Wright 1922 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>Write a dated note of {}</source>
        <translation>Datierte Notiz zu {} schreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tag_menu.py"/>
        <source>Write down</source>
        <translation>Aufzeichnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>Write down a cross</source>
        <translation>Eine Kreuzung aufschreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>Write down a gene with its alleles, the dominant one first, and what they look like, such as C and c, regular leaf and potato leaf. Scores of a trait with those words then tell which plants carry what, through parents, progeny and selfings.</source>
        <translation>Ein Gen mit seinen Allelen aufschreiben, das dominante zuerst, und wie sie aussehen, etwa C und c, normales Blatt und Kartoffelblatt. Bonituren eines Merkmals mit diesen Worten sagen dann, welche Pflanzen was tragen, durch Eltern, Nachkommen und Selbstungen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>Write down plants raised</source>
        <translation>Herangezogene Pflanzen aufschreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>Write down when plants flower, or choose another day or another set.</source>
        <translation>Aufschreiben, wann Pflanzen blühen, oder einen anderen Tag oder andere Pflanzen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Write down …</source>
        <translation>Aufschreiben …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Write down: {} is a selfing of {}</source>
        <translation>Aufschreiben: {} ist eine Selbstung von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>Write it as 9:3:4.</source>
        <translation>Als 9:3:4 schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>Write one part for each class, in the order of the table.</source>
        <translation>Für jede Klasse einen Teil schreiben, in der Reihenfolge der Tabelle.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>Write the PDF</source>
        <translation>PDF schreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>Write the finding for all {} selfs</source>
        <translation>Befund für alle {} Selbstungen schreiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>Writing the new book …</source>
        <translation>Neues Buch wird geschrieben …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <location filename="../../pedigreeview/window/report_dialog.py"/>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>Writing …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>Written down for {}: {}.</source>
        <translation>Für {} aufgeschrieben: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Written down: {}.</source>
        <translation>Aufgeschrieben: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_save.py"/>
        <source>XLSX, a table for a spreadsheet</source>
        <translation>XLSX, eine Tabelle für die Tabellenkalkulation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>Year of the crosses shown</source>
        <translation>Jahr der gezeigten Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Years are taken as alike, for no variety was grown in both.</source>
        <translation>Jahre gelten als gleich, da keine Sorte in beiden wuchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>Years made alike by varieties grown in both.</source>
        <translation>Jahre angeglichen über Sorten, die in beiden wuchsen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>Youngest generation</source>
        <translation>Jüngste Generation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>Your name and address, as they are to stand on it</source>
        <translation>Name und Anschrift, wie sie darauf stehen sollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>a difference that turns round from one generation to the next.</source>
        <translation>ein Unterschied, der sich von einer Generation zur nächsten umkehrt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>a new packet</source>
        <translation>eine neue Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>a plant no longer stands among its own ancestors</source>
        <translation>eine Pflanze nicht mehr unter ihren eigenen Ahnen steht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>a plant nobody knows</source>
        <translation>eine Pflanze, die niemand kennt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>a plant of that code</source>
        <translation>eine Pflanze mit diesem Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>a quarter of {}</source>
        <translation>ein Viertel von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>a selfing</source>
        <translation>eine Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>a trait, each cell a score</source>
        <translation>ein Merkmal, jede Zelle eine Bonitur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>a variety</source>
        <translation>eine Sorte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>a variety, until it is asked</source>
        <translation>eine Sorte, bis danach gefragt wird</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>about</source>
        <translation>betrifft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>additive gene {}</source>
        <translation>additives Gen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>additive genes of one trait</source>
        <translation>additive Gene eines Merkmals</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>against</source>
        <translation>gegen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>against it</source>
        <translation>dagegen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>against the pollen parent: {}</source>
        <translation>gegen den Pollenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>against the seed parent: {}</source>
        <translation>gegen den Samenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>all about {}</source>
        <translation>alles über {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>all alleles</source>
        <translation>alle Allele</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>all kept</source>
        <translation>alle behaltenen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>all look alike</source>
        <translation>alle sehen gleich aus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>all of {}</source>
        <translation>alles von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>all on one sheet</source>
        <translation>alles auf einem Blatt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>all that grow or are kept</source>
        <translation>alle wachsenden oder behaltenen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>all work</source>
        <translation>alle Arbeiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>all years</source>
        <translation>alle Jahre</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>all {}</source>
        <translation>alle {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>all {} alike as measured</source>
        <translation>alle {} gleich, wie gemessen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>all {} alike as measured, too few to tell</source>
        <translation>alle {} gleich gemessen, zu wenige</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <source>allele {}</source>
        <translation>Allel {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>alleles</source>
        <translation>Allele</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>an unknown plant</source>
        <translation>eine unbekannte Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>and its place there</source>
        <translation>und seine Position dort</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>and {:,} more founders</source>
        <translation>und {:,} weitere Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>and {} more</source>
        <translation>und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>another parent</source>
        <translation>ein anderer Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>another parent for {}</source>
        <translation>ein anderer Elter für {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>another plant</source>
        <translation>eine andere Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>any founder</source>
        <translation>jeder Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>any pollen parent</source>
        <translation>jeder Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>any seed parent</source>
        <translation>jeder Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>any status</source>
        <translation>jeder Status</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>any trait</source>
        <translation>jedes Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>as even as its parents</source>
        <translation>so einheitlich wie die Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>as it fits better</source>
        <translation>wie es besser passt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>as it is shown now</source>
        <translation>wie jetzt gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>as it was; ? for not known</source>
        <translation>wie bisher; ? für unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>as pollen parent</source>
        <translation>als Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>as seed parent</source>
        <translation>als Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>as the crop</source>
        <translation>wie die Kulturart</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>as the crop: {}</source>
        <translation>wie die Kulturart: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>as the packet states it</source>
        <translation>wie auf der Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>as the parents say, or type 9:3:4</source>
        <translation>nach den Eltern, oder 9:3:4 eintippen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>at least </source>
        <translation>mindestens </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>back, forward</source>
        <translation>zurück, vorwärts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>bag, tape, cage, petals off, none</source>
        <translation>Beutel, Band, Käfig, Blütenblätter ab, keine</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>bed / row / position</source>
        <translation>Beet / Reihe / Position</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>beds</source>
        <translation>Beete</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>beside a number: what adds up to it, through which ancestors and paths, by which rule and on which base. Point at a path to see it in the picture; a click keeps it lit.</source>
        <translation>neben einer Zahl: was sich zu ihr addiert, durch welche Ahnen und Wege, nach welcher Regel und auf welcher Basis. Auf einen Weg zeigen, um ihn im Bild zu sehen; ein Klick lässt ihn leuchten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>blank</source>
        <translation>leer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>bookmark this place, all bookmarks</source>
        <translation>Lesezeichen hier setzen, alle Lesezeichen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>bookmark {}</source>
        <translation>Lesezeichen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>borne on</source>
        <translation>getragen von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>both parents in one cell</source>
        <translation>beide Eltern in einer Zelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>bringing in {}</source>
        <translation>Einlesen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>brings {}, {}</source>
        <translation>bringt {}, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>bud</source>
        <translation>Knospe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>by chi-square, as each class is expected in 5 plants or more</source>
        <translation>nach Chi-Quadrat, da in jeder Klasse 5 Pflanzen oder mehr erwartet sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>by code</source>
        <translation>nach Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>by counts drawn at random, as there are too many to list</source>
        <translation>nach zufällig gezogenen Zahlen, da es zu viele zum Aufzählen sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by cover</source>
        <translation>nach Hülle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by cross</source>
        <translation>nach Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>by cuttings, tubers, grafts or division</source>
        <translation>durch Stecklinge, Knollen, Veredlung oder Teilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by day</source>
        <translation>nach Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by direction</source>
        <translation>nach Richtung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>by generation</source>
        <translation>nach Generation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by how sure the bud was closed</source>
        <translation>danach, wie sicher die Knospe zu war</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>by its own seed, a mixed population</source>
        <translation>durch eigenen Samen, eine gemischte Population</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>by its own seed, true to type</source>
        <translation>durch eigenen Samen, sortenecht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>by likeness, with the tree</source>
        <translation>nach Ähnlichkeit, mit dem Baum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by month</source>
        <translation>nach Monat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by person</source>
        <translation>nach Person</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>by plant</source>
        <translation>nach Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by pollen parent</source>
        <translation>nach Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by seed parent</source>
        <translation>nach Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>by the exact test, as a class is expected in fewer than 5 plants</source>
        <translation>nach dem exakten Test, da in einer Klasse weniger als 5 Pflanzen erwartet sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>by variety</source>
        <translation>nach Sorten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>by year</source>
        <translation>nach Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>calling right no longer: {}</source>
        <translation>nicht mehr für richtig erklärt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>calling right: {}</source>
        <translation>für richtig erklärt: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>came from: {}</source>
        <translation>stammt von: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>came up</source>
        <translation>aufgelaufen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>candidate</source>
        <translation>Kandidat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>candidate of {}</source>
        <translation>Kandidat von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>candidates</source>
        <translation>Kandidaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tint_bar.py"/>
        <source>carries {}</source>
        <translation>trägt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>carry pollen: cross the two, in one direction or both</source>
        <translation>Pollen bringen: die beiden kreuzen, in einer Richtung oder beiden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>category, one of some words</source>
        <translation>Kategorie, eines von einigen Worten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>cell</source>
        <translation>Zelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>certain</source>
        <translation>sicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>certain: covered, tagged, a marker showed it</source>
        <translation>sicher: mit Hülle, mit Etikett, ein Marker hat es gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>certain: covered, tagged, and shown by a marker</source>
        <translation>sicher: mit Hülle, mit Etikett und durch einen Marker gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>chance to have what is wanted</source>
        <translation>Chance auf das Gewünschte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>chi-square {}</source>
        <translation>Chi-Quadrat {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>chromosome</source>
        <translation>Chromosom</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>chromosomes doubled</source>
        <translation>Chromosomen verdoppelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>click marks a plant and lights its relatives, double click opens it; the wheel zooms, with Ctrl across only, with Shift down only; Esc clears the mark.</source>
        <translation>Klick markiert eine Pflanze und lässt ihre Verwandten leuchten, Doppelklick öffnet sie; das Mausrad zoomt, mit Strg nur in die Breite, mit Umschalt nur in die Höhe; Esc hebt die Markierung auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>closely linked, r = 0.01</source>
        <translation>eng gekoppelt, r = 0,01</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>closely linked, r = 0.05</source>
        <translation>eng gekoppelt, r = 0,05</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>coancestry</source>
        <translation>Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>coancestry {}</source>
        <translation>Verwandtschaft θ {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/record_field.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>code</source>
        <translation>Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>code of the cross</source>
        <translation>Code der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>code of the plant</source>
        <translation>Code der Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <source>code or name</source>
        <translation>Code oder Name</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>code {} for {}</source>
        <translation>Code {} für {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <source>code, name, cross, trait …</source>
        <translation>Code, Name, Kreuzung, Merkmal …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>codes</source>
        <translation>Codes</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>codes, parted by commas</source>
        <translation>Codes, mit Komma getrennt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_choice.py"/>
        <source>codes, with commas; 23-* for all that begin so</source>
        <translation>Codes, mit Komma; 23-* für alle, die so beginnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>collected</source>
        <translation>gesammelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>comes with the seed parent and stays: the difference is there in the F2 and after as well.</source>
        <translation>kommt mit dem Samenelter und bleibt: Der Unterschied ist auch in der F2 und danach da.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>compatibility of {}</source>
        <translation>Verträglichkeit von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>count of packet {}</source>
        <translation>Zählung der Samentüte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>cover</source>
        <translation>Hülle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>cover off {}</source>
        <translation>Hülle ab von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>covered</source>
        <translation>mit Hülle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>crop</source>
        <translation>Kulturart</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <location filename="../../pedigreeview/window/new_book.py"/>
        <source>crop, or nothing for several</source>
        <translation>Kulturart, oder nichts für mehrere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>cross of {} with mixed pollen</source>
        <translation>Kreuzung von {} mit Mischpollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/writing.py"/>
        <source>cross {}</source>
        <translation>Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>crosses</source>
        <translation>Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>crosses of all years</source>
        <translation>Kreuzungen aller Jahre</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>crossing list</source>
        <translation>Kreuzungsliste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>culled</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>culled: decided against</source>
        <translation>verworfen: dagegen entschieden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>culling {}</source>
        <translation>Verwerfen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>cutting</source>
        <translation>Steckling</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>cutting of</source>
        <translation>Steckling von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>cutting of {}</source>
        <translation>Steckling von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>date of sowing</source>
        <translation>Datum der Aussaat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>date of the cross</source>
        <translation>Datum der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>date of the harvest</source>
        <translation>Datum der Ernte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>day after tomorrow</source>
        <translation>übermorgen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>day ago</source>
        <translation>Tag her</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>day before yesterday</source>
        <translation>vorgestern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>deleting {}</source>
        <translation>Löschen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>deleting {} with its progeny</source>
        <translation>Löschen von {} samt Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>deleting {}, its progeny kept</source>
        <translation>Löschen von {}, Nachkommen bleiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>different plants</source>
        <translation>verschiedene Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>direction known</source>
        <translation>Richtung bekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>division</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>do the counts fit a ratio?</source>
        <translation>passen die Zahlen zu einem Spaltungsverhältnis?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>does it breed true?</source>
        <translation>ist sie reinerbig?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>dominance</source>
        <translation>Dominanz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>dominant gene {}</source>
        <translation>dominantes Gen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>dominant genes</source>
        <translation>dominante Gene</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>doubled form of</source>
        <translation>verdoppelte Form von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>doubled haploid</source>
        <translation>Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>doubled haploid of</source>
        <translation>Doppelhaploide von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>doubled haploid of {}</source>
        <translation>Doppelhaploide von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>doubt about {}</source>
        <translation>Zweifel an {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>down</source>
        <translation>runter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>drag it to move the card, click it to open or fold it</source>
        <translation>Ziehen bewegt die Karteikarte, ein Klick klappt sie auf oder zu</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>drawn, ± {}</source>
        <translation>gezogen, ± {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>dropped</source>
        <translation>abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>dry, in the refrigerator</source>
        <translation>trocken, im Kühlschrank</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>dwarf and white like TP</source>
        <translation>zwergig und weiß wie TP</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>each seed its own</source>
        <translation>jeder Samen einen eigenen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>emasculated on</source>
        <translation>kastriert am</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every bed</source>
        <translation>jedes Beet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every cross of the season</source>
        <translation>jede Kreuzung der Saison</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every cross that is planned, or worked on that day</source>
        <translation>jede Kreuzung, die geplant ist oder an diesem Tag bestäubt wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>every fruit dropped</source>
        <translation>jede Frucht abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every packet with seed left</source>
        <translation>jede Samentüte, in der noch Samen ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every plant that grows</source>
        <translation>jede Pflanze, die wächst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every pollination that may have set fruit</source>
        <translation>jede Bestäubung, die Frucht angesetzt haben kann</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every pollination whose fruits are not counted</source>
        <translation>jede Bestäubung, deren Früchte nicht gezählt sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every pollination, and every planned cross</source>
        <translation>jede Bestäubung und jede geplante Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>every sowing</source>
        <translation>jede Aussaat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>everything</source>
        <translation>alles</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>evidence on {}</source>
        <translation>Beleg zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>exact</source>
        <translation>exakt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>exact test</source>
        <translation>exakter Test</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/bars.py"/>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>fade the others</source>
        <translation>andere verblassen lassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>family, kept together</source>
        <translation>Familie, zusammengehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>fertile</source>
        <translation>fruchtbar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>fertility of {}</source>
        <translation>Fruchtbarkeit von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>few plants differ anyway; more of both, grown side by side, tell.</source>
        <translation>wenige Pflanzen unterscheiden sich ohnehin; mehr von beiden, nebeneinander angebaut, zeigen es.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>filled in by</source>
        <translation>ausgefüllt von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>find by code, name or cross</source>
        <translation>nach Code, Name oder Kreuzung suchen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>finding on {}</source>
        <translation>Befund an {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>finished</source>
        <translation>fertig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>first flower</source>
        <translation>erste Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>fit on one sheet</source>
        <translation>auf ein Blatt eingepasst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>fixation</source>
        <translation>Fixierung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>flowering of {}</source>
        <translation>Blütezeit von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>flowers that set</source>
        <translation>Blüten, die angesetzt haben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>flowers worked</source>
        <translation>bestäubte Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>focus</source>
        <translation>Fokus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>for</source>
        <translation>dafür</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>for it</source>
        <translation>dafür</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>for or against</source>
        <translation>dafür oder dagegen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>for the pollen parent: {}</source>
        <translation>für den Pollenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>for the seed parent: {}</source>
        <translation>für den Samenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>founder</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>from left to right</source>
        <translation>von links nach rechts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>from the pollen parent</source>
        <translation>vom Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>from the seed parent</source>
        <translation>vom Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>from top to bottom</source>
        <translation>von oben nach unten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find.py"/>
        <source>from {}</source>
        <translation>aus {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>from {} ({})</source>
        <translation>aus {} ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>from {} on</source>
        <translation>ab {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>fruits harvested</source>
        <translation>geerntete Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>fruits labelled of {}</source>
        <translation>etikettierte Früchte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>fruits of pollination {}</source>
        <translation>Früchte der Bestäubung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <location filename="../../pedigreeview/window/typing_model.py"/>
        <source>fruits set</source>
        <translation>angesetzte Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>full size, over several sheets to join</source>
        <translation>volle Größe, auf mehreren Blättern zum Zusammenfügen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>further notes</source>
        <translation>weitere Notizen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/papers_dialog.py"/>
        <source>garden sheet {}</source>
        <translation>Gartenblatt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>garden sheet {} typed in</source>
        <translation>Gartenblatt {} eingetippt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>gene</source>
        <translation>Gen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>gene {}</source>
        <translation>Gen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>generation of the seed</source>
        <translation>Generation des Samens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>generation {}</source>
        <translation>Generation {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>genotype</source>
        <translation>Genotyp</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>genotype of {}</source>
        <translation>Genotyp von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>germination</source>
        <translation>Keimung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>give or take (one sd)</source>
        <translation>± (eine Standardabw.)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/code_fields.py"/>
        <source>gives {}: {}</source>
        <translation>ergibt {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>grade</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>graft</source>
        <translation>Veredlung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>groups</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>growing</source>
        <translation>wächst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>half of {}</source>
        <translation>die Hälfte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>harvest of {}</source>
        <translation>Ernte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>harvest {}</source>
        <translation>Ernte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>her seed is larger or better fed: early vigour differs in the F1 and fades in the F2.</source>
        <translation>ihr Samen ist größer oder besser versorgt: Der Jugendwuchs unterscheidet sich in der F1, in der F2 verliert sich das.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>heritability among plants of the base</source>
        <translation>Heritabilität unter Pflanzen der Basis</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>heritability, likely {} to {}; {} values of {} plants</source>
        <translation>Heritabilität, wahrscheinlich {} bis {}; {} Werte von {} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>hide the others</source>
        <translation>andere ausblenden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>highest</source>
        <translation>höchster</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>how connected, what came of it, cytoplasm, all near</source>
        <translation>Zusammenhang, was daraus wurde, Zytoplasma, alles in der Nähe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>how it arose</source>
        <translation>wie sie entstand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>how it came to light</source>
        <translation>wie es herauskam</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>how sure</source>
        <translation>wie sicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>how the plant arose</source>
        <translation>wie die Pflanze entstand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>h² = σ²a / (σ²a + σ²e), by REML along this one number; interval by likelihood</source>
        <translation>h² = σ²a / (σ²a + σ²e), nach REML entlang dieser einen Zahl; Intervall nach Likelihood</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>in shares</source>
        <translation>in Anteilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>in {}</source>
        <translation>{} bis dahin</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>initials</source>
        <translation>Initialen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>intended</source>
        <translation>beabsichtigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>into a new book</source>
        <translation>in ein neues Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>into {}</source>
        <translation>in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>it differs</source>
        <translation>unterscheidet sich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>it still varies more</source>
        <translation>sie schwankt noch stärker</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>its records are put right</source>
        <translation>ihre Aufzeichnungen berichtigt sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>kept as a note under its heading</source>
        <translation>als Notiz unter der Überschrift behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>kept on purpose</source>
        <translation>absichtlich behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>known by</source>
        <translation>bekannt durch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>last</source>
        <translation>letzten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>last day</source>
        <translation>letzter Tag</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>last flower</source>
        <translation>letzte Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>lays the signs that occur in the picture over a corner of it</source>
        <translation>legt die Zeichen, die im Bild vorkommen, über eine Ecke davon</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>leave as it is</source>
        <translation>lassen, wie es ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>lengthwise</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/menus.py"/>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>linked, r = 0.1</source>
        <translation>gekoppelt, r = 0,1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>linked, r = 0.2</source>
        <translation>gekoppelt, r = 0,2</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>looks stable</source>
        <translation>wirkt stabil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>loop tags {}</source>
        <translation>Schlaufenetiketten {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>loosely linked, r = 0.3</source>
        <translation>lose gekoppelt, r = 0,3</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_model.py"/>
        <source>lost since</source>
        <translation>seither abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>lost: died or missing</source>
        <translation>verloren: abgestorben oder verschwunden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>lowest</source>
        <translation>niedrigster</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>made</source>
        <translation>gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>made already</source>
        <translation>schon gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>made of the name</source>
        <translation>aus dem Namen gebildet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>made on</source>
        <translation>gemacht am</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>made this way only</source>
        <translation>nur in dieser Richtung gekreuzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>mark on {}</source>
        <translation>Vermerk zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>marker, progeny test</source>
        <translation>Marker, Nachkommentest</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>measure with a unit</source>
        <translation>Maß mit einer Einheit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>mid-parent over the wishes</source>
        <translation>Elternmittel über die Wünsche</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>more</source>
        <translation>weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>more ancestor brings the rest.</source>
        <translation>weiterer Ahn bringt den Rest.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>more ancestors bring the rest.</source>
        <translation>weitere Ahnen bringen den Rest.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>more path is counted but not listed.</source>
        <translation>weiterer Weg ist gezählt, aber nicht aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>more paths are counted but not listed.</source>
        <translation>weitere Wege sind gezählt, aber nicht aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>more selfing brings F to 0.99.</source>
        <translation>weitere Selbstung bringt F auf 0,99.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>more selfings bring F to 0.99.</source>
        <translation>weitere Selbstungen bringen F auf 0,99.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>more; type to find it.</source>
        <translation>weiteres; zum Finden tippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_page.py"/>
        <source>more; type to find them.</source>
        <translation>weitere; zum Finden tippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>mostly its own flowers; else not known</source>
        <translation>meist die eigenen Blüten; sonst unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>move the picture, nearer and further</source>
        <translation>das Bild bewegen, näher und weiter weg</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>moving {} to {}</source>
        <translation>Umsetzen von {} nach {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>name of the trait</source>
        <translation>Name des Merkmals</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>naming {} as {}</source>
        <translation>Benennen von {} als {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>nearer, further, fit</source>
        <translation>näher, weiter weg, einpassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>neither</source>
        <translation>keins von beiden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>next</source>
        <translation>nächsten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>no date comes before what must have been first</source>
        <translation>kein Datum liegt vor dem, was zuerst gewesen sein muss</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>no difference shown</source>
        <translation>kein Unterschied gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>no flower took</source>
        <translation>keine Blüte hat angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>no flowers counted</source>
        <translation>keine Blüten gezählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_limits.py"/>
        <source>no limit; 1/8 or 0.125</source>
        <translation>keine Grenze; 1/8 oder 0.125</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>no longer there: {}</source>
        <translation>nicht mehr da: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>no own off-type seen, too few to tell</source>
        <translation>kein eigener Abweicher gesehen, zu wenige</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>no packet yet</source>
        <translation>noch keine Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>no plant is its own ancestor</source>
        <translation>keine Pflanze ist ihr eigener Ahn</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>no plants that are all alike were measured</source>
        <translation>keine Pflanzen gemessen, die alle gleich sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>no reason written</source>
        <translation>kein Grund notiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>no row: the columns have no headings</source>
        <translation>keine Zeile: die Spalten haben keine Überschriften</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>no two codes look alike</source>
        <translation>keine zwei Codes sehen gleich aus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>no, it was open</source>
        <translation>nein, sie war offen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>nobody knows</source>
        <translation>niemand weiß es</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>none recorded</source>
        <translation>keine aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>none: founder, {}</source>
        <translation>keine: Gründer, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>not at all: a bought F1 hybrid</source>
        <translation>gar nicht: eine gekaufte F1-Hybride</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>not known: the line ends in an unknown plant</source>
        <translation>unbekannt: die Linie endet in einer unbekannten Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>not made yet</source>
        <translation>noch nicht gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>not rejected</source>
        <translation>nicht abgelehnt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <source>not said</source>
        <translation>ohne Angabe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>not scored</source>
        <translation>nicht bonitiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>not shown</source>
        <translation>nicht gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>not stable</source>
        <translation>nicht stabil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>not sure</source>
        <translation>nicht sicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>not taken</source>
        <translation>nicht genommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>not there</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>not written down</source>
        <translation>nicht aufgeschrieben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>note of {}</source>
        <translation>Notiz zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>note on {}</source>
        <translation>Notiz zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find.py"/>
        <source>note: {}</source>
        <translation>Notiz: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>nothing that tells</source>
        <translation>nichts, was es zeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>nothing to compare</source>
        <translation>nichts zu vergleichen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>number of the sheet</source>
        <translation>Nummer des Blatts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>numbered plants</source>
        <translation>nummerierte Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>numerator relationship, twice the coancestry</source>
        <translation>Wrights Verwandtschaft, das Doppelte der Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>obtained from</source>
        <translation>erhalten von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>odds</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>odds after = odds before × Π (chance in a self / chance in a hybrid)</source>
        <translation>Wahrscheinlichkeitsverhältnis danach = Wahrscheinlichkeitsverhältnis davor × Π (Wahrscheinlichkeit bei Selbstung / Wahrscheinlichkeit bei Hybride)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>odds of pollen parents</source>
        <translation>Wahrscheinlichkeiten der Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>odds {}</source>
        <translation>Wahrscheinlichkeit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>of its seed</source>
        <translation>ihres Samens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>of the plant</source>
        <translation>der Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>of those live to be judged</source>
        <translation>davon leben bis zur Beurteilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_model.py"/>
        <source>off-types</source>
        <translation>Abweicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>on one side</source>
        <translation>auf einer Seite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>on the other</source>
        <translation>auf der anderen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>once its fruits are counted</source>
        <translation>sobald ihre Früchte gezählt sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>once its harvest is written down</source>
        <translation>sobald ihre Ernte aufgeschrieben ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>once its seed is in a packet</source>
        <translation>sobald ihr Samen in einer Samentüte ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>once its seed is sown</source>
        <translation>sobald ihr Samen gesät ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>once plants of it are raised</source>
        <translation>sobald Pflanzen davon herangezogen sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>one</source>
        <translation>einer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>one &amp;cross, with its flowers, pods and seeds</source>
        <translation>eine &amp;Kreuzung, mit Blüten, Früchten und Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>one &amp;plant</source>
        <translation>eine &amp;Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <source>one of</source>
        <translation>einer von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>one of several, with odds</source>
        <translation>einer von mehreren, mit Wahrscheinlichkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>one parent, twice the slope</source>
        <translation>einen Elter, doppelte Steigung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>one plant</source>
        <translation>eine Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>one plant, or several with commas</source>
        <translation>eine Pflanze, oder mehrere mit Komma</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>one plant: {}</source>
        <translation>eine Pflanze: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>one pollen parent or many</source>
        <translation>ein Pollenelter oder viele</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>one pollen parent or one for each seed</source>
        <translation>ein Pollenelter oder je Samen einer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>one row or bulk, kept together</source>
        <translation>eine Reihe oder Ramsch, zusammengehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>one row whose plants mated with each other</source>
        <translation>eine Reihe, deren Pflanzen sich untereinander bestäubten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>one standard deviation</source>
        <translation>eine Standardabweichung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>only more than {} would show</source>
        <translation>nur mehr als {} wäre zu erkennen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>open-pollinated</source>
        <translation>frei abgeblüht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>open-pollinated seed of {}</source>
        <translation>frei abgeblühter Samen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <source>open-pollinated varieties of unlike plants (fixation 0)</source>
        <translation>frei abgeblühte Sorten aus ungleichen Pflanzen (Fixierung 0)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/welcome.py"/>
        <source>or drop a file anywhere on this window</source>
        <translation>oder eine Datei irgendwo auf dieses Fenster ziehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>or seed of a cross or plant &amp;without a packet</source>
        <translation>oder Samen einer Kreuzung oder Pflanze &amp;ohne Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>other parents of the cross {}</source>
        <translation>andere Eltern der Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>other stock, by its measures</source>
        <translation>anderer Bogen, nach Maßen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>others</source>
        <translation>andere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>over several sheets, with marks</source>
        <translation>über mehrere Blätter, mit Marken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>p = {}</source>
        <translation>p = {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>p = {}, {}. The ratio: {}.</source>
        <translation>p = {}, {}. Das Spaltungsverhältnis: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>p after Holm</source>
        <translation>p nach Holm</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>p below 0.001</source>
        <translation>p unter 0,001</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>p is the chance of a count at least as far off if the ratio is true; below 0.05 it is said not to fit.</source>
        <translation>p ist die Wahrscheinlichkeit einer mindestens so weit abweichenden Zahl, wenn das Spaltungsverhältnis stimmt; unter 0,05 heißt es: passt nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>p is the chance of a table at least as rare as this one if both directions gave the same shares.</source>
        <translation>p ist die Wahrscheinlichkeit einer mindestens so seltenen Tafel wie dieser, wenn beide Richtungen dieselben Anteile ergäben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>p is the chance of a table at least as rare as this one if both directions took alike and the same number of fruits set in all.</source>
        <translation>p ist die Wahrscheinlichkeit einer mindestens so seltenen Tafel wie dieser, wenn beide Richtungen gleich ansetzten und insgesamt gleich viele Früchte angesetzt wären.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>p: Fisher's exact test of the 2×2 table, two-sided. Interval: Newcombe's, from Wilson's interval of each take. What can be shown: power of the exact test, 80%.</source>
        <translation>p: exakter Test nach Fisher der 2×2-Tafel, zweiseitig. Intervall: nach Newcombe, aus Wilsons Intervall jeder Ansatzrate. Was nachweisbar ist: Teststärke des exakten Tests, 80%.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>packet</source>
        <translation>Samentüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>packet of seed of {}</source>
        <translation>Samentüte mit Samen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>packet {}</source>
        <translation>Samentüte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>partner</source>
        <translation>Partner</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>pasted</source>
        <translation>eingefügt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>perhaps the pollen parent: {}</source>
        <translation>vielleicht der Pollenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>photo of {}</source>
        <translation>Foto von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>photo {}</source>
        <translation>Foto {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>photo {} of {}</source>
        <translation>Foto {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_photos.py"/>
        <source>photos of {}</source>
        <translation>Fotos von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>pick plants; the other pages work with them</source>
        <translation>Pflanzen auswählen; die anderen Seiten arbeiten damit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>pick this plant, pick all shown, pick none</source>
        <translation>diese Pflanze auswählen, alle gezeigten, keine</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>picked plant</source>
        <translation>ausgewählte Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>picked plants</source>
        <translation>ausgewählte Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>pin it, or take the pin out</source>
        <translation>anstecken, oder die Nadel herausziehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>pin, or take the pin out; pins are lettered A, B, C</source>
        <translation>anstecken, oder die Nadel herausziehen; Nadeln heißen A, B, C</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pinned</source>
        <translation>angesteckt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>place in cM</source>
        <translation>Position in cM</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>place {}</source>
        <translation>Platz {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find.py"/>
        <source>place: {}</source>
        <translation>Platz: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>planned, and of {}</source>
        <translation>geplant, und aus {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>planned, made or skipped</source>
        <translation>geplant, gemacht oder ausgelassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>planning {}</source>
        <translation>Planen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>plant is not scored for it.</source>
        <translation>Pflanze ist dafür nicht bonitiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>plant picked</source>
        <translation>Pflanze ausgewählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>plant {}</source>
        <translation>Pflanze {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/index_drawer.py"/>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <location filename="../../pedigreeview/window/relatedness_lists.py"/>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>plants are not scored for it.</source>
        <translation>Pflanzen sind dafür nicht bonitiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/picked_bar.py"/>
        <source>plants picked</source>
        <translation>Pflanzen ausgewählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>ploidy</source>
        <translation>Ploidie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollen kept</source>
        <translation>aufbewahrter Pollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>pollen of {}</source>
        <translation>Pollen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollen parent</source>
        <translation>Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollen parent is</source>
        <translation>Pollenelter ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>pollen parent not known</source>
        <translation>Pollenelter unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>pollen parent ♂</source>
        <translation>Pollenelter ♂</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>pollen parent: {}</source>
        <translation>Pollenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollen {}</source>
        <translation>Pollen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>pollination of {}</source>
        <translation>Bestäubung von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>pollination {}</source>
        <translation>Bestäubung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>pollinations</source>
        <translation>Bestäubungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>possible</source>
        <translation>möglich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>possible: one of named candidates</source>
        <translation>möglich: einer von genannten Kandidaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>print the picture</source>
        <translation>das Bild drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>probable</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>probable: worked by hand, tag read</source>
        <translation>wahrscheinlich: von Hand bestäubt, Etikett gelesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>problem</source>
        <translation>Problem</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>protected</source>
        <translation>geschützt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>protection</source>
        <translation>Schutz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>pull out or push in the index</source>
        <translation>Index herausziehen oder hineinschieben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>put that plant in focus and open its card</source>
        <translation>jene Pflanze in den Fokus nehmen und ihre Karteikarte öffnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>put this plant in focus</source>
        <translation>diese Pflanze in den Fokus nehmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <source>read-only</source>
        <translation>schreibgeschützt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>recessive gene {}</source>
        <translation>rezessives Gen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>recessive genes</source>
        <translation>rezessive Gene</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>rejected</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>relationship</source>
        <translation>Verwandtschaftsgrad</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>relationship, coancestry over the root of both</source>
        <translation>Verwandtschaftsgrad, Verwandtschaft θ durch die Wurzel aus beiden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>removing a photo of {}</source>
        <translation>Entfernen eines Fotos von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/copying.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>row of {}</source>
        <translation>Reihe von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>row {}: {}</source>
        <translation>Zeile {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/copying.py"/>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>rows sown</source>
        <translation>gesäte Reihen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>score of {}</source>
        <translation>Bonitur von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>score of {}: {}</source>
        <translation>Bonitur von {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>score on a scale</source>
        <translation>Bonitur auf einer Skala</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>scored by</source>
        <translation>bonitiert von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>scores</source>
        <translation>Bonituren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/figure.py"/>
        <source>see {}</source>
        <translation>siehe {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>seed</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>seed of</source>
        <translation>Samen von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>seed of {}</source>
        <translation>Samen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>seed parent</source>
        <translation>Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>seed parent and pollen parent: {}</source>
        <translation>Samenelter und Pollenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>seed parent is</source>
        <translation>Samenelter ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>seed parent ♀</source>
        <translation>Samenelter ♀</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>seed parent: {}</source>
        <translation>Samenelter: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <source>seed-true lines, each founder breeds true (fixation 1)</source>
        <translation>samenechte Linien, jeder Gründer ist reinerbig (Fixierung 1)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>seedlings of sowing {}</source>
        <translation>Sämlinge der Aussaat {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>seeds harvested</source>
        <translation>geerntete Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>seeds sown</source>
        <translation>gesäte Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/bars.py"/>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>seldom more than</source>
        <translation>selten mehr als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>self</source>
        <translation>Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>selfing</source>
        <translation>Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>selfing of {}</source>
        <translation>Selbstung von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>selfings after the cross</source>
        <translation>Selbstungen nach der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>selfings not recorded</source>
        <translation>nicht aufgezeichnete Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>selfs</source>
        <translation>Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>set</source>
        <translation>angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>sibs mated in</source>
        <translation>Geschwisterpaarung in</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>sibs mated in {}</source>
        <translation>Geschwisterpaarung in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/new_place.py"/>
        <source>single plants kept by cuttings, tubers or division (fixation 0)</source>
        <translation>einzelne Pflanzen, durch Stecklinge, Knollen oder Teilung erhalten (Fixierung 0)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>skipped</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>skipping {}</source>
        <translation>Auslassen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>slope on {}, {} families with {} progeny</source>
        <translation>Steigung gegen {}, {} Familien mit {} Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>sowing</source>
        <translation>Aussaat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>sowing of {}</source>
        <translation>Aussaat von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>sowing {}</source>
        <translation>Aussaat {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>sown</source>
        <translation>gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>sown from</source>
        <translation>gesät von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>sown to</source>
        <translation>gesät bis</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>sown {}</source>
        <translation>gesät {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>sport: a changed shoot</source>
        <translation>Sport: ein veränderter Trieb</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>spread against plants that are alike</source>
        <translation>Streuung gegen gleiche Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>stakes {}</source>
        <translation>Stecketiketten {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>state</source>
        <translation>Stand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>status</source>
        <translation>Status</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/find.py"/>
        <source>status: {}</source>
        <translation>Status: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>step undone</source>
        <translation>Schritt rückgängig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/desk.py"/>
        <source>steps undone</source>
        <translation>Schritte rückgängig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>sterile</source>
        <translation>steril</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>stored</source>
        <translation>aufbewahrt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>such as Ann-</source>
        <translation>etwa Anna-</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>such as F2</source>
        <translation>etwa F2</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>surely</source>
        <translation>sicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>surely not</source>
        <translation>sicher nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>taken</source>
        <translation>genommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <source>tall; dwarf</source>
        <translation>hoch; zwergig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>the coancestry</source>
        <translation>der Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>the counts of flowers, fruits and seeds agree</source>
        <translation>die Zahlen der Blüten, Früchte und Samen stimmen überein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>the cross {}</source>
        <translation>die Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>the crosses planned</source>
        <translation>die geplanten Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>the fixation stated in its line is put right</source>
        <translation>die in ihrer Linie angegebene Fixierung berichtigt ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/report_form.py"/>
        <source>the history of the line that ends in {}</source>
        <translation>die Geschichte der Linie, die mit {} endet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>the latest of {}</source>
        <translation>die neueste von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_question.py"/>
        <source>the measured trait</source>
        <translation>das gemessene Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>the middle of both parents</source>
        <translation>das Mittel beider Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>the numbers of chromosome sets of its line agree</source>
        <translation>die Zahlen der Chromosomensätze ihrer Linie übereinstimmen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>the pages from the top of the rail down</source>
        <translation>die Seiten der Leiste von oben nach unten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>the parent is not known</source>
        <translation>der Elter ist unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/opening.py"/>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>the picked plants</source>
        <translation>die ausgewählten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>the picture as it is shown</source>
        <translation>das Bild wie gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>the plant in its place</source>
        <translation>die Pflanze an ihrer Stelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/opening.py"/>
        <source>the plant in view, {}</source>
        <translation>die gezeigte Pflanze, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>the pollen parent</source>
        <translation>der Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>the progeny of {} to {}</source>
        <translation>die Nachkommen von {} zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>the quick line: one line for one thing done</source>
        <translation>die Schnellzeile: eine Zeile für eine getane Sache</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/base_panel.py"/>
        <source>the record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>the score of the pair</source>
        <translation>die Wertung des Paars</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>the seed parent</source>
        <translation>der Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <source>the seed parent itself: a selfing</source>
        <translation>der Samenelter selbst: eine Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>the selfed parent</source>
        <translation>den geselbsteten Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>the sowings of the latest year</source>
        <translation>die Aussaaten des neuesten Jahres</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <location filename="../../pedigreeview/window/save_picture.py"/>
        <source>the whole book</source>
        <translation>das ganze Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>the whole book, {}</source>
        <translation>das ganze Buch, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>thing to do</source>
        <translation>Arbeit zu tun</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>things to do</source>
        <translation>Arbeiten zu tun</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>this F</source>
        <translation>diesem F</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>this page</source>
        <translation>diese Seite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>those that I name</source>
        <translation>die ich nenne</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>those that are picked, {}</source>
        <translation>die ausgewählten, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>to the first of the progeny</source>
        <translation>zum ersten Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>to the neighbour in the row</source>
        <translation>zum Nachbarn in der Reihe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>to the next mate</source>
        <translation>zum nächsten Partner</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>to the pollen parent</source>
        <translation>zum Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>to the reciprocal partner</source>
        <translation>zum reziproken Partner</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>to the seed parent</source>
        <translation>zum Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <location filename="../../pedigreeview/window/translating.py"/>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/fields.py"/>
        <source>today, 3.5., 3 May, -2</source>
        <translation>heute, 3.5., 3. Mai, -2</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>too few to tell</source>
        <translation>zu wenige, um es zu sagen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>trait {}</source>
        <translation>Merkmal {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>true hybrid</source>
        <translation>echte Hybride</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>true hybrids</source>
        <translation>echte Hybriden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>tuber</source>
        <translation>Knolle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>typed in</source>
        <translation>eingetippt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>undo, redo</source>
        <translation>rückgängig, wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>unfold what is folded away; the number says how many</source>
        <translation>Eingeklapptes ausklappen; die Zahl sagt, wie viel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>unfold, fold</source>
        <translation>ausklappen, einklappen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <location filename="../../pedigreeview/window/parents_lines.py"/>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>unknown parents</source>
        <translation>unbekannte Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/doubt.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>unknown: nobody saw</source>
        <translation>unbekannt: niemand hat es gesehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>unlikely</source>
        <translation>unwahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>unlinked</source>
        <translation>ungekoppelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>unsure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>upright</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>variety</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>variety {}</source>
        <translation>Sorte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>variety, plant or family</source>
        <translation>Sorte, Pflanze oder Familie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/why_panel.py"/>
        <source>weight {}</source>
        <translation>Gewicht {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <source>what I name by its codes</source>
        <translation>was ich mit Codes nenne</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_page.py"/>
        <source>what is due here</source>
        <translation>was hier fällig ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>what it shows</source>
        <translation>was es zeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>what the two have between them</source>
        <translation>was die beiden zusammen haben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>where it came from</source>
        <translation>woher sie kam</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>where it was obtained</source>
        <translation>woher sie erhalten wurde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>which are accidental selfings?</source>
        <translation>welche sind ungewollte Selbstungen?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>which to keep for a measure?</source>
        <translation>welche für ein Maß behalten?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging_page.py"/>
        <source>who carries what?</source>
        <translation>wer trägt was?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>who worked it</source>
        <translation>wer bestäubt hat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>whole book</source>
        <translation>ganzes Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/checks_page.py"/>
        <source>why it is right; Enter keeps it, Esc leaves it</source>
        <translation>warum es richtig ist; Eingabe speichert, Esc lässt es</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>why, if you like</source>
        <translation>warum, falls gewünscht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>with</source>
        <translation>mit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>with an assurance of</source>
        <translation>mit einer Sicherheit von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>withheld</source>
        <translation>zurückgehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <source>without limit</source>
        <translation>ohne Grenze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_dialog.py"/>
        <source>words of a photo of {}</source>
        <translation>Text zu einem Foto von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/help_pages.py"/>
        <source>write down: variety, cross, pollination, fruits, harvest, sowing …</source>
        <translation>aufschreiben: Sorte, Kreuzung, Bestäubung, Früchte, Ernte, Aussaat …</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/record_cells.py"/>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/other.py"/>
        <location filename="../../pedigreeview/window/record_words.py"/>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>yes, closed</source>
        <translation>ja, geschlossen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/translating.py"/>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>{:,} candidates are more than are weighed; {:,} are the most.</source>
        <translation>{:,} Kandidaten sind mehr, als abgewogen werden; {:,} sind das Höchste.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>{:,} pairs</source>
        <translation>{:,} Paare</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>{:,} plants are</source>
        <translation>{:,} Pflanzen sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_table.py"/>
        <source>{:,} plants are more than a heat map shows; {:,} are the most.</source>
        <translation>{:,} Pflanzen sind mehr, als eine Heatmap zeigt; {:,} sind das Höchste.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_panel.py"/>
        <source>{:.3g} cM</source>
        <translation>{:.3g} cM</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>{}  {}</source>
        <translation>{}  {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>{} (again: a loop)</source>
        <translation>{} (noch einmal: eine Schleife)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>{} (in the book)</source>
        <translation>{} (im Buch)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>{} (in the book, and {}×)</source>
        <translation>{} (im Buch, und {}×)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>{} (measured {}, n {})</source>
        <translation>{} (gemessen {}, n {})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{} (n {})</source>
        <translation>{} (n {})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/edits_list.py"/>
        <source>{} (undone)</source>
        <translation>{} (rückgängig)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/sheet_step.py"/>
        <source>{} ({} rows)</source>
        <translation>{} ({} Zeilen)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>{} ({} seen)</source>
        <translation>{} ({} gesehen)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>{} ({}×)</source>
        <translation>{} ({}×)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_ranking.py"/>
        <source>{} and not scored</source>
        <translation>{} und nicht bonitiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{} and {} flowers can only show a difference larger than {} points, in four trials of five.</source>
        <translation>{} und {} Blüten können in vier von fünf Versuchen nur einen Unterschied von mehr als {} Prozentpunkten zeigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{} and {} flowers can show no difference at all in four trials of five.</source>
        <translation>{} und {} Blüten können in vier von fünf Versuchen gar keinen Unterschied zeigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>{} and {} more</source>
        <translation>{} und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>{} are both in {}</source>
        <translation>{} stehen beide in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>{} as they are shown now, in their order.</source>
        <translation>{}, wie sie jetzt gezeigt werden, in ihrer Folge.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>{} bears the seed</source>
        <translation>{} trägt den Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>{} bears the seed.</source>
        <translation>{} trägt den Samen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/growing_target.py"/>
        <source>{} brought by the {}</source>
        <translation>{} vom {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>{} came in</source>
        <translation>{} eingelesen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/questions_step.py"/>
        <source>{} can be read both ways, and no other date of the table tells.</source>
        <translation>{} ist auf beide Weisen lesbar, und kein anderes Datum der Tabelle entscheidet es.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>{} cannot be reached</source>
        <translation>{} ist nicht erreichbar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/photo_files.py"/>
        <source>{} cannot be read as a picture.</source>
        <translation>{} ist nicht als Bild lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>{} cannot be taken; they are underlined.</source>
        <translation>Nicht annehmbar: {}; unterstrichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_model.py"/>
        <source>{} cells</source>
        <translation>{} Zellen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>{} cells cannot be taken; nothing is recorded. {}</source>
        <translation>{} Zellen sind nicht annehmbar; nichts ist aufgezeichnet. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>{} chosen of {} candidates, {} progeny</source>
        <translation>{} gewählt von {} Kandidaten, {} Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <location filename="../../pedigreeview/window/save_copy.py"/>
        <source>{} copy</source>
        <translation>{} Kopie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/differences.py"/>
        <source>{} differ between your book and what comes in; theirs is taken for {}.</source>
        <translation>Zwischen Buch und Einzulesendem verschieden: {}; der fremde Wert gilt für {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/founders_question.py"/>
        <source>{} does not say how these are kept: {}. The numbers of relationship depend on it, through the fixation of each founder: 1 = breeds true, 0 = not fixed at all. The answer is remembered for this file and can be changed from the line at the foot of the window.</source>
        <translation>{} sagt nicht, wie diese erhalten werden: {}. Die Verwandtschaftszahlen hängen davon ab, durch die Fixierung jedes Gründers: 1 = reinerbig, 0 = gar nicht fixiert. Die Antwort bleibt für diese Datei gemerkt und ist über die Zeile unten im Fenster änderbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/plant_facts.py"/>
        <source>{} doubled</source>
        <translation>{} verdoppelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>{} families are tested together; Holm's correction keeps one of them from being called by luck. The verdict goes by the corrected p.</source>
        <translation>{} Familien werden zusammen geprüft; die Holm-Korrektur verhindert, dass der Zufall für eine davon entscheidet. Das Urteil richtet sich nach dem korrigierten p.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>{} fit, the best first.</source>
        <translation>{} passen, das beste zuerst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>{} flowers</source>
        <translation>{} Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/pollinating.py"/>
        <source>{} flowers were pollinated.</source>
        <translation>{} Blüten wurden bestäubt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/columns_step.py"/>
        <source>{} further columns are read as guessed.</source>
        <translation>{} weitere Spalten werden wie vermutet gelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>{} further families rank below these.</source>
        <translation>{} weitere Familien stehen darunter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>{} further groups stay apart; put them together in the book later on.</source>
        <translation>{} weitere Gruppen bleiben getrennt; sie lassen sich später im Buch zusammenlegen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{} goes there by itself {}.</source>
        <translation>{} kommt von selbst dorthin, {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/choices.py"/>
        <source>{} has {} parts, but {} classes were seen.</source>
        <translation>{} hat {} Teile, aber {} Klassen waren zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/deleting_dialog.py"/>
        <source>{} in the place of {}</source>
        <translation>{} an der Stelle von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>{} is in the book.</source>
        <translation>{} steht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{} is made. Its flowers are not written down yet.</source>
        <translation>{} ist gemacht. Die Blüten sind noch nicht aufgeschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>{} is marked: {} ancestors, {} descendants.</source>
        <translation>{} ist markiert: {} Ahnen, {} Nachfahren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>{} is no number of a sheet: its last sign checks the others. Read it again.</source>
        <translation>{} ist keine Blattnummer: Das letzte Zeichen prüft die anderen. Noch einmal lesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>{} is no plant of this book.</source>
        <translation>{} ist keine Pflanze dieses Buches.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/entrance.py"/>
        <source>{} is no plant table as it stands. Say what its columns mean to bring it in.</source>
        <translation>{} ist so keine Pflanzentabelle. Angeben, was die Spalten bedeuten, um sie einzulesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{} is only tried out: it is not in the book.</source>
        <translation>{} ist nur ausprobiert: Es steht nicht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/keeping.py"/>
        <source>{} is shown for reading. To write in it, keep it as a book.</source>
        <translation>{} wird zum Lesen gezeigt. Zum Hineinschreiben als Buch speichern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>{} is the first in its row.</source>
        <translation>{} ist die erste in ihrer Reihe.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>{} is the last in its row.</source>
        <translation>{} ist die letzte in ihrer Reihe.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>{} is there already. Press again to replace it.</source>
        <translation>{} gibt es schon. Noch einmal drücken, um es zu ersetzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>{} is {}x.</source>
        <translation>{} ist {}x.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>{} late</source>
        <translation>{} zu spät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>{} left</source>
        <translation>noch {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>{} left out as protected.</source>
        <translation>{} als geschützt ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>{} left out, since they depend on records that cannot be right.</source>
        <translation>{} ausgelassen, da von Aufzeichnungen abhängig, die nicht stimmen können.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_asking.py"/>
        <source>{} left out: {}.</source>
        <translation>{} ausgelassen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{} made</source>
        <translation>{} gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_page.py"/>
        <source>{} make {}; {} keep to the limits, the best {} are listed.</source>
        <translation>{} ergeben {}; {} halten die Grenzen ein, die besten {} sind aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/export_dialog.py"/>
        <source>{} matrix</source>
        <translation>{}-Matrix</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>{} more</source>
        <translation>{} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card.py"/>
        <source>{} more founders</source>
        <translation>{} weitere Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>{} moved to the cross {}</source>
        <translation>{} in die Kreuzung {} verschoben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>{} of about {} lines to parents are drawn; come nearer to see all.</source>
        <translation>{} von etwa {} Linien zu Eltern sind gezeichnet; näher sind alle zu sehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_notes.py"/>
        <source>{} of its seed</source>
        <translation>{} ihres Samens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>{} of the checks would be mended.</source>
        <translation>Aus den Prüfungen behoben: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/merging_dialog.py"/>
        <source>{} of the other book stand for something else in yours. Theirs are changed by this rule, everywhere; yours stay.</source>
        <translation>{} des anderen Buches stehen im eigenen für etwas anderes. Dort werden sie nach dieser Regel geändert, überall; die eigenen bleiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <location filename="../../pedigreeview/window/records_model.py"/>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>{} of {}</source>
        <translation>{} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{} of {} (1 outcross or stray)</source>
        <translation>{} von {} (1 Fremdbestäubung oder Verirrte)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{} of {} ({} outcrosses or strays)</source>
        <translation>{} von {} ({} Fremdbestäubungen oder Verirrte)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>{} of {} flowers took</source>
        <translation>{} von {} Blüten haben angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{} of {} is {}%, {} of {} is {}%.</source>
        <translation>{} von {} sind {}%, {} von {} sind {}%.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/filter_bar.py"/>
        <source>{} of {} plants fit.</source>
        <translation>{} von {} Pflanzen passen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>{} of {} raised</source>
        <translation>{} von {} herangezogen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>{} of {} rows</source>
        <translation>{} von {} Zeilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>{} of {} rows filled in. Enter goes down, Tab across, Ctrl+Enter records all.</source>
        <translation>{} von {} Zeilen ausgefüllt. Eingabe geht nach unten, Tab nach rechts, Strg+Eingabe zeichnet alle auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>{} of {} sown</source>
        <translation>{} von {} gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>{} of {} × {}</source>
        <translation>{} von {} × {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>{} of {}, {}%</source>
        <translation>{} von {}, {}%</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>{} of {}.</source>
        <translation>{} von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{} older lines are not judged here.</source>
        <translation>{} ältere Linien werden hier nicht beurteilt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{} over {} plants</source>
        <translation>{} über {} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{} planned again</source>
        <translation>{} wieder geplant</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/judging/hybrid_panel.py"/>
        <source>{} plants</source>
        <translation>{} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>{} plants are in the book: {} to {}.</source>
        <translation>{} Pflanzen stehen im Buch: {} bis {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <source>{} plants are too few to tell {} from {}; about {} would.</source>
        <translation>{} Pflanzen sind zu wenige, um {} von {} zu unterscheiden; etwa {} würden reichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/overview.py"/>
        <source>{} plants in {} bands; the fullest is {} with {}.</source>
        <translation>{} Pflanzen in {} Bändern; das vollste ist {} mit {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <source>{} plants of {}</source>
        <translation>{} Pflanzen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{} plants that do not fit are folded away.</source>
        <translation>{} unpassende Pflanzen sind eingeklappt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{} points</source>
        <translation>{} Prozentpunkte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>{} pollinations lack their flowers or their fruits and are left out.</source>
        <translation>Bei {} Bestäubungen fehlen die Blüten oder die Früchte; sie sind ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/wizard.py"/>
        <source>{} problems; the first are marked and listed.</source>
        <translation>{} Probleme; die ersten sind markiert und aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/rescue_dialog.py"/>
        <source>{} rescued</source>
        <translation>{} gerettet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/records_page.py"/>
        <source>{} rows</source>
        <translation>{} Zeilen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>{} scores</source>
        <translation>{} Bonituren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>{} scores and genotypes speak of {}, of {} plant.</source>
        <translation>{} Bonituren und Genotypen sagen etwas über {}, bei {} Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>{} scores and genotypes speak of {}, of {} plants.</source>
        <translation>{} Bonituren und Genotypen sagen etwas über {}, bei {} Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>{} scores of this day, {} cells empty. Enter goes down, Tab across.</source>
        <translation>{} Bonituren dieses Tages, {} Zellen leer. Eingabe geht nach unten, Tab nach rechts.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/seed.py"/>
        <source>{} seeds are left in the packet.</source>
        <translation>{} Samen sind noch in der Samentüte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>{} seeds left</source>
        <translation>noch {} Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/print_view.py"/>
        <source>{} sent to {}</source>
        <translation>{} an {} gesendet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>{} set of {} flowers</source>
        <translation>{} angesetzt von {} Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/papers/words.py"/>
        <source>{} sheet, {} × {}: {}</source>
        <translation>Bogen {}, {} × {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{} skipped</source>
        <translation>{} ausgelassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{} stands where its records show; it cannot be moved back.</source>
        <translation>{} steht, wo die Aufzeichnungen es zeigen; zurück geht es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/genes_panel.py"/>
        <source>{} surely carry {}, {} likely</source>
        <translation>{} tragen sicher {}, {} wahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>{} that differed: changed to what came in.</source>
        <translation>{}, abweichend: geändert auf das Eingelesene.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>{} that differed: left as the book had it.</source>
        <translation>{}, abweichend: gelassen wie im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>{} that the book had blank: filled in.</source>
        <translation>{}, im Buch leer: ausgefüllt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{} times, likely {} to {}</source>
        <translation>{}-fach, wahrscheinlich {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/groups.py"/>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <location filename="../../pedigreeview/window/season_words.py"/>
        <source>{} to {}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>{} to {}%</source>
        <translation>{} bis {}%</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <source>{} up of {} sown</source>
        <translation>{} aufgelaufen von {} gesäten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/walking.py"/>
        <source>{} was crossed with no other plant.</source>
        <translation>{} wurde mit keiner anderen Pflanze gekreuzt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/door.py"/>
        <source>{} was not opened</source>
        <translation>{} wurde nicht geöffnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/words.py"/>
        <source>{} with its chromosomes doubled.</source>
        <translation>{} mit verdoppelten Chromosomen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>{} with itself: {} {}</source>
        <translation>{} mit sich selbst: {} {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_pair.py"/>
        <source>{} with {}</source>
        <translation>{} mit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/pair_slip.py"/>
        <source>{} with {}: how they are related</source>
        <translation>{} mit {}: wie sie verwandt sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>{} with {}: {} {}</source>
        <translation>{} mit {}: {} {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bed_plan.py"/>
        <source>{} without a place</source>
        <translation>{} ohne Platz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/correcting_dialog.py"/>
        <source>{} would change.</source>
        <translation>Es würde sich ändern: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/curve.py"/>
        <source>{} {:.1%}</source>
        <translation>{} {:.1%}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_page.py"/>
        <source>{} {}</source>
        <translation>{} {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/words.py"/>
        <source>{} · {}</source>
        <translation>{} · {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>{} · {} values</source>
        <translation>{} · {} Werte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>{} × {}</source>
        <translation>{} × {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_several.py"/>
        <source>{} × {}, F {}, merit {:.3f}</source>
        <translation>{} × {}, F {}, Güte {:.3f}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/main_window.py"/>
        <source>{} – Crossing Book</source>
        <translation>{} – Kreuzungsbuch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/bookmark_dialog.py"/>
        <source>{} – {}</source>
        <translation>{} – {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{}% of what once segregated is expected to do so still in each plant.</source>
        <translation>{}% dessen, was einst aufspaltete, spaltet voraussichtlich noch in jeder Pflanze auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>{}, 1 pin</source>
        <translation>{}, 1 Nadel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{}, against {}</source>
        <translation>{}, gegen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/bars.py"/>
        <source>{}, expected {}</source>
        <translation>{}, erwartet {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{}, likely {} to {}</source>
        <translation>{}, wahrscheinlich {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>{}, too few to tell</source>
        <translation>{}, zu wenige, um es zu sagen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>{}, typed in {}</source>
        <translation>{}, eingetippt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_takes.py"/>
        <source>{}, {} left out</source>
        <translation>{}, {} ausgelassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_bookmarks.py"/>
        <source>{}, {} pins</source>
        <translation>{}, {} Nadeln</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/copying.py"/>
        <source>{}, {}: the table is on the clipboard.</source>
        <translation>{}, {}: die Tabelle liegt in der Zwischenablage.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/season_board.py"/>
        <source>{}. Plants: {}</source>
        <translation>{}. Pflanzen: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: all its descendants.</source>
        <translation>{}: alle ihre Nachfahren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: all of it was kept, finished or used as a parent.</source>
        <translation>{}: Alles davon ist behalten, fertig oder als Elter verwendet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: by seed parents back to {}, and all that has it from there.</source>
        <translation>{}: über Samenelter zurück bis {}, und alles, was es von dort hat.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>{}: from 0, palest, to {:g}, deepest</source>
        <translation>{}: von 0, am hellsten, bis {:g}, am kräftigsten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>{}: its lines meet those of {} at {}; they are lit.</source>
        <translation>{}: Die Linien treffen die von {} bei {}; sie leuchten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: nothing was kept, finished or used as a parent.</source>
        <translation>{}: Nichts ist behalten, fertig oder als Elter verwendet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>{}: one fewer</source>
        <translation>{}: eins weniger</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/tool_row.py"/>
        <source>{}: one more</source>
        <translation>{}: eins mehr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>{}: one of {}</source>
        <translation>{}: eines von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>{}: shares no ancestor in this book with {}.</source>
        <translation>{}: kein Ahn in diesem Buch gemeinsam mit {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_compare.py"/>
        <source>{}: the same plant on both sides.</source>
        <translation>{}: auf beiden Seiten dieselbe Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: their lines meet at {}.</source>
        <translation>{}: Ihre Linien treffen sich bei {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/same_step.py"/>
        <source>{}: they are</source>
        <translation>{}: sie sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: they share no ancestor in this book.</source>
        <translation>{}: kein gemeinsamer Ahn in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>{}: weight {}</source>
        <translation>{}: Gewicht {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_sliders.py"/>
        <source>{}: weight {}; arrow keys move it</source>
        <translation>{}: Gewicht {}; Pfeiltasten ändern es</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: what was kept, finished or used as a parent; 1 other is left out.</source>
        <translation>{}: was behalten, fertig oder als Elter verwendet ist; 1 weitere ist ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: what was kept, finished or used as a parent; {} others are left out.</source>
        <translation>{}: was behalten, fertig oder als Elter verwendet ist; {} weitere sind ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>{}: yes or no</source>
        <translation>{}: ja oder nein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/curve.py"/>
        <source>{}: {:.0%} at {}</source>
        <translation>{}: {:.0%} bei {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>{}: {:.2f}, weight {:g}</source>
        <translation>{}: {:.2f}, Gewicht {:g}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/card_edit.py"/>
        <location filename="../../pedigreeview/window/forms/growing.py"/>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <location filename="../../pedigreeview/window/judging/segregation_panel.py"/>
        <location filename="../../pedigreeview/window/papers/paper_form.py"/>
        <location filename="../../pedigreeview/window/parents_wishes.py"/>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <location filename="../../pedigreeview/window/season_columns.py"/>
        <location filename="../../pedigreeview/window/season_due.py"/>
        <source>{}: {}</source>
        <translation>{}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{}: {} ({}, {}).</source>
        <translation>{}: {} ({}, {}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: {} descends from {}, and their lines meet at {}.</source>
        <translation>{}: {} stammt von {} ab, und ihre Linien treffen sich bei {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/page_ways.py"/>
        <source>{}: {} descends from {}.</source>
        <translation>{}: {} stammt von {} ab.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_access.py"/>
        <source>{}: {} plant</source>
        <translation>{}: {} Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/map_access.py"/>
        <source>{}: {} plants</source>
        <translation>{}: {} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/score_sheet.py"/>
        <source>{}: {} to {}</source>
        <translation>{}: {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/line_panel.py"/>
        <source>{}: {} {} in a row of {}</source>
        <translation>{}: {} {} in einer Reihe mit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/typing_in.py"/>
        <source>{}: {}, {}, printed {}</source>
        <translation>{}: {}, {}, gedruckt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>{}: {}{}</source>
        <translation>{}: {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/contradiction_cards.py"/>
        <source>{}; in each one of the records must be wrong.</source>
        <translation>{}; in jeder muss eine der Aufzeichnungen falsch sein.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>{}; listed above already, a loop</source>
        <translation>{}; oben schon aufgeführt, eine Schleife</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/relatedness_page.py"/>
        <source>{}; mean of all pairs {}.</source>
        <translation>{}; Mittel aller Paare {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/parents_pair.py"/>
        <source>{}; single scores from {:.3g} to {:.3g}</source>
        <translation>{}; einzelne Bonituren von {:.3g} bis {:.3g}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/curve.py"/>
        <source>{}; the broken line marks {:.3g}%</source>
        <translation>{}; die gestrichelte Linie zeigt {:.3g}%</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_tests.py"/>
        <source>{}; {} after Holm's correction</source>
        <translation>{}; {} nach Holm-Korrektur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/book_settings.py"/>
        <source>{}x</source>
        <translation>{}x</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/reciprocals_counts.py"/>
        <source>{}{}  (mean of {})</source>
        <translation>{}{}  (Mittel von {})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>{}{}: the dot is what to expect of more plants of a family, with its 95% interval; the ring is the mean as measured. Means of few plants are drawn more towards the mean of all.</source>
        <translation>{}{}: Der Punkt ist, was von weiteren Pflanzen einer Familie zu erwarten ist, mit 95-%-Intervall; der Ring ist das Mittel wie gemessen. Mittel weniger Pflanzen werden stärker zum Mittel aller gezogen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>× back to a parent of its own</source>
        <translation>× zurück zu einem eigenen Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>× two plants</source>
        <translation>× zwei Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>θ of {} and {}: {}</source>
        <translation>θ von {} und {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/answers.py"/>
        <source>θ of {} with itself: {}</source>
        <translation>θ von {} mit sich selbst: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/judging/selection_panel.py"/>
        <source>σ² additive {}, σ² of chance {}.</source>
        <translation>σ² additiv {}, σ² des Zufalls {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/importing/preview_panel.py"/>
        <location filename="../../pedigreeview/window/relatives_tree.py"/>
        <source>… and {} more</source>
        <translation>… und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>⊗ a plant with itself</source>
        <translation>⊗ eine Pflanze mit sich selbst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/window/forms/crossing.py"/>
        <source>○ open-pollinated seed</source>
        <translation>○ frei abgeblühter Samen</translation>
    </message>
</context>
<context>
    <name>Engine</name>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source> (1 outcross or stray)</source>
        <translation> (1 Fremdbestäubung oder Verirrte)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source> (per cent)</source>
        <translation> (Prozent)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source> Double reduction {} at 4x</source>
        <translation> Doppelreduktion {} bei 4x</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source> Open-pollinated seed by outcrossing rate: {}.</source>
        <translation> Frei abgeblühter Samen nach Fremdbefruchtungsrate: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/pages.py"/>
        <source> That is hard to read: take larger paper, or several sheets.</source>
        <translation> Das ist schwer zu lesen: größeres Papier nehmen oder mehrere Bögen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_plan.py"/>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source> That is more than the bed holds.</source>
        <translation> Das ist mehr, als das Beet fasst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source> The next free label on the last sheet is number {}.</source>
        <translation> Das nächste freie Etikett auf dem letzten Bogen ist Nummer {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source> and {}</source>
        <translation> und {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/near_duplicates.py"/>
        <source> and {} more</source>
        <translation> und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source> from {}</source>
        <translation> von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source> of BC{}F1</source>
        <translation> aus BC{}F1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source> of at least {} digits</source>
        <translation> mit mindestens {} Ziffern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source> of {}</source>
        <translation> von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source> to {}</source>
        <translation> bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source> with odds {}</source>
        <translation> mit Wahrscheinlichkeit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source> with {}</source>
        <translation> mit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>'{}' cannot be taken back or made again: its records are no longer as it left them.</source>
        <translation>„{}“ lässt sich nicht zurücknehmen oder wiederherstellen: Die Aufzeichnungen sind nicht mehr so, wie der Schritt sie hinterließ.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>'{}' is no kind of code.</source>
        <translation>„{}“ ist keine Art von Code.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/view.py"/>
        <source>'{}' is not a plant of this book.</source>
        <translation>„{}“ ist keine Pflanze dieses Buchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>'{}' is not a trait of this book.</source>
        <translation>„{}“ ist kein Merkmal dieses Buchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>'{}' names no allele of a gene.</source>
        <translation>„{}“ nennt kein Allel eines Gens.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>(pollen parent of {})</source>
        <translation>(Pollenelter von {})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <source>({} more)</source>
        <translation>({} weitere)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>, 0 taken at 6x and above.</source>
        <translation>, 0 angenommen ab 6x.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>, a loop tag with a fold</source>
        <translation>, ein Schlaufenetikett mit Falz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>, a stake with a foot of {} mm</source>
        <translation>, ein Pfahl mit einem Fuß von {} mm</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>, high is better</source>
        <translation>, hoch ist besser</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/seen.py"/>
        <source>, its seed</source>
        <translation>, sein Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>, likely between {} and {}</source>
        <translation>, wahrscheinlich zwischen {} und {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>, low is better</source>
        <translation>, niedrig ist besser</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>, tag {}</source>
        <translation>, Etikett {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>, the highest is best</source>
        <translation>, der höchste ist der beste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>, the lowest is best</source>
        <translation>, der niedrigste ist der beste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>, with odds {}</source>
        <translation>, mit Wahrscheinlichkeit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>, {} after Holm's correction</source>
        <translation>, {} nach Holm-Korrektur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/targets.py"/>
        <source>, {} linked pair{} of neighbours</source>
        <translation>, gekoppelt: {} Nachbar-Duo{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>, {} of them lost</source>
        <translation>, davon {} abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>1 day old</source>
        <translation>1 Tag alt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>1 in {}</source>
        <translation>1 von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>1 more plant is</source>
        <translation>1 weitere Pflanze ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_pages.py"/>
        <source>1 page of {}.</source>
        <translation>1 Seite {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>1 unrecorded selfing</source>
        <translation>1 nicht aufgezeichnete Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>19 true seedlings in 20 (common practice, no source)</source>
        <translation>19 echte Sämlinge von 20 (gängige Praxis, ohne Quelle)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>; each unrecorded selfing applies the rule of a selfing once more</source>
        <translation>; jede nicht aufgezeichnete Selbstung wendet die Regel einer Selbstung noch einmal an</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>; their lines also meet at {}</source>
        <translation>; ihre Linien treffen sich auch bei {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>A cover may come off {} to {} days after pollination.</source>
        <translation>Eine Hülle kann {} bis {} Tage nach der Bestäubung abgenommen werden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>A cross that failed stays 'made' with no fruit set; take away what was recorded by mistake first.</source>
        <translation>Eine misslungene Kreuzung bleibt „gemacht“, ohne angesetzte Frucht; zuerst entfernen, was irrtümlich aufgezeichnet ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>A cross wants two plants with a sign between them.</source>
        <translation>Eine Kreuzung braucht zwei Pflanzen mit einem Zeichen dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A cross was made when its seed parent was not in flower.</source>
        <translation>Eine Kreuzung wurde gemacht, als ihr Samenelter nicht blühte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A cross was made with a plant after it was culled or lost.</source>
        <translation>Eine Kreuzung wurde mit einer Pflanze gemacht, die schon verworfen oder verloren war.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>A cutting, division or shoot of {}: the same plant in another place.</source>
        <translation>Ein Steckling, eine Teilung oder ein Trieb von {}: dieselbe Pflanze an einem anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>A difference may come from the cytoplasm, from the mother plant, from mixed-up labels or from chance; self plants of both directions and grow them side by side to tell: what the mother plant gave fades there, what the cytoplasm gives stays.</source>
        <translation>Ein Unterschied kann vom Zytoplasma kommen, von der Mutterpflanze, von vertauschten Etiketten oder vom Zufall; zur Klärung Pflanzen beider Richtungen selbsten und nebeneinander heranziehen: Was die Mutterpflanze gab, verblasst dort, was das Zytoplasma gibt, bleibt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>A doubled haploid of {}: fixed in one step.</source>
        <translation>Eine Doppelhaploide von {}: in einem Schritt fixiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>A flower that never took is not set and not lost; correct one of the counts.</source>
        <translation>Eine Blüte, die nie ansetzte, ist weder angesetzt noch abgefallen; eine der Zahlen berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>A founder: nothing is recorded before it.</source>
        <translation>Ein Gründer: Davor ist nichts aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A line states a fixation that is lower than its parents allow.</source>
        <translation>Eine Linie gibt eine Fixierung an, die niedriger ist, als ihre Eltern zulassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>A little less than {}.</source>
        <translation>Etwas weniger als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>A little more than {}.</source>
        <translation>Etwas mehr als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>A newer version of this program keeps this book (form {}; this version knows {}).</source>
        <translation>Eine neuere Version dieses Programms führt dieses Buch (Form {}; diese Version kennt {}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A packet has more seeds left than it held.</source>
        <translation>In einer Samentüte sind mehr Samen übrig, als sie enthielt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A parent has an odd number of chromosome sets.</source>
        <translation>Ein Elter hat eine ungerade Zahl von Chromosomensätzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>A picture cannot be written as '{}'.</source>
        <translation>Ein Bild lässt sich nicht als „{}“ schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <source>A picture cannot be written to a file that ends in {}.</source>
        <translation>Ein Bild lässt sich nicht in eine Datei mit der Endung {} schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A planned cross has a parent that is culled or lost.</source>
        <translation>Eine geplante Kreuzung hat einen Elter, der verworfen oder verloren ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A plant stands among its own ancestors: a pedigree loop.</source>
        <translation>Eine Pflanze steht unter ihren eigenen Ahnen: eine Stammbaumschleife.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A plant without parents is not the parent of any other.</source>
        <translation>Eine Pflanze ohne Eltern ist auch von keiner anderen Elter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>A plant: code, name or generation</source>
        <translation>Eine Pflanze: Code, Name oder Generation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A pollination used pollen of a plant that is no parent of its cross.</source>
        <translation>Eine Bestäubung verwendete Pollen einer Pflanze, die kein Elter ihrer Kreuzung ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>A score wants a plant, a trait and a value.</source>
        <translation>Eine Bonitur braucht Pflanze, Merkmal und Wert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>A sheet cannot have {} rows.</source>
        <translation>Ein Blatt kann nicht {} Zeilen haben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sowings.py"/>
        <source>A sowing names either its packet or what the seed came from.</source>
        <translation>Eine Aussaat nennt entweder ihre Samentüte oder die Herkunft des Samens.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>A word for 'not known' stands where a parent's code should.</source>
        <translation>Ein Wort für „unbekannt“ steht, wo der Code eines Elters stehen sollte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>A {} (row {} of {}) names a {} that is not in the book.</source>
        <translation>{} (Zeile {} von {}) nennt etwas, das nicht im Buch steht: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>A, B, C ...: pinned to compare</source>
        <translation>A, B, C ...: zum Vergleichen angesteckt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>Add a locus with two alleles whose phenotypes are the trait's values.</source>
        <translation>Ein Gen mit zwei Allelen hinzufügen, deren Phänotypen die Werte des Merkmals sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>Add it first, or choose another.</source>
        <translation>Zuerst hinzufügen oder ein anderes wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/linkage_drag.py"/>
        <source>After {} {} about {} cM of the donor are expected to stay around the kept gene ({} on one side, {} on the other), and seldom more than {}.</source>
        <translation>Nach {} {} bleiben um das behaltene Gen voraussichtlich etwa {} cM des Donors ({} auf der einen Seite, {} auf der anderen), selten mehr als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>All look alike, so nothing segregates here.</source>
        <translation>Alle sehen gleich aus; hier spaltet also nichts auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>All look alike, so there is nothing to compare.</source>
        <translation>Alle sehen gleich aus; hier ist also nichts zu vergleichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>All of its cross had</source>
        <translation>Ihre ganze Kreuzung hatte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>All of its gene pairs are alike by descent: it breeds true.</source>
        <translation>Alle Genpaare sind durch Abstammung gleich: reinerbig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>All that has the cytoplasm of {}, back to {} by seed parents.</source>
        <translation>Alles mit dem Zytoplasma von {}, zurück bis {} über Samenelter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/inference.py"/>
        <source>Alleles in founders and unknown parents: {}; {}.</source>
        <translation>Allele in Gründern und unbekannten Eltern: {}; {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>An annual plant is a parent in a season after its last.</source>
        <translation>Eine einjährige Pflanze ist Elter in einer Saison nach ihrer letzten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>An unknown plant</source>
        <translation>Eine unbekannte Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/book_file.py"/>
        <source>Another file stands in the place of the book.</source>
        <translation>Eine andere Datei steht an der Stelle des Buchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Another window has written in the book; its last step is now '{}'.</source>
        <translation>Ein anderes Fenster hat in das Buch geschrieben; der letzte Schritt ist nun „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Arrow back to an ancestor: an impossible loop, see Checks</source>
        <translation>Pfeil zurück zu einem Ahn: eine unmögliche Schleife, siehe Prüfungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>As a clone: by cuttings, tubers or division; every piece is the same plant.</source>
        <translation>Als Klon: durch Stecklinge, Knollen oder Teilung; jedes Stück ist dieselbe Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>As a clone: it was divided, or cuttings were struck.</source>
        <translation>Als Klon: geteilt oder als Steckling bewurzelt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>As one plant and its cuttings, tubers or divisions, not by seed.</source>
        <translation>Als eine Pflanze mit ihren Stecklingen, Knollen oder Teilungen, nicht durch Samen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/spread.py"/>
        <source>Ask about a plant nearer to the founders.</source>
        <translation>Nach einer Pflanze fragen, die den Gründern näher ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/sampler.py"/>
        <source>Ask about fewer plants, or allow a rate of misread phenotypes.</source>
        <translation>Nach weniger Pflanzen fragen oder einen Anteil falsch erkannter Phänotypen zulassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>Ask about one gene at a time.</source>
        <translation>Nach einem Gen auf einmal fragen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>Ask about one trait.</source>
        <translation>Nach einem Merkmal fragen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/gene_drop.py"/>
        <source>Ask about plants nearer to the founders.</source>
        <translation>Nach Pflanzen fragen, die den Gründern näher sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/choosing.py"/>
        <source>Ask for less merit, or let a parent be used more often.</source>
        <translation>Weniger Güte verlangen oder einen Elter öfter verwenden lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>At {} dpi the picture would be {} by {} pixels, too many for a PNG.</source>
        <translation>Bei {} dpi hätte das Bild {} mal {} Pixel, zu viele für ein PNG.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>Base: founders unrelated; {}.</source>
        <translation>Basis: Gründer nicht verwandt; {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>Base: no founders.</source>
        <translation>Basis: keine Gründer.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>Begin with a label from 1 to {}.</source>
        <translation>Mit einem Etikett von 1 bis {} beginnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/book.py"/>
        <source>Book lacks {}</source>
        <translation>Dem Buch fehlt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>Borne on {}</source>
        <translation>Samen getragen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>Both directions go back to the same cytoplasm, so it cannot be what differs.</source>
        <translation>Beide Richtungen gehen auf dasselbe Zytoplasma zurück; daran kann es also nicht liegen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Both directions of the cross</source>
        <translation>Beide Richtungen der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Both parents of a cross are one plant, or cuttings of one.</source>
        <translation>Beide Eltern einer Kreuzung sind eine Pflanze oder Stecklinge einer Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>By its own seed, as a line that breeds true.</source>
        <translation>Durch eigenen Samen, als reinerbige Linie.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>By seed of plants that cross among themselves.</source>
        <translation>Durch Samen von Pflanzen, die sich untereinander kreuzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>By seed; its plants are alike in part (fixation {}).</source>
        <translation>Durch Samen; die Pflanzen sind zum Teil gleich (Fixierung {}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>By themselves these families do not fit, after Holm's correction: {}.</source>
        <translation>Für sich passen diese Familien nicht, nach Holm-Korrektur: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>By {} a plant shows all that is wanted with a chance of {}</source>
        <translation>Über {} zeigt eine Pflanze alles Gewünschte mit Wahrscheinlichkeit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Came from {} until this correction; now the cross {}. {}</source>
        <translation>Herkunft bis zu dieser Berichtigung: {}; nun die Kreuzung {}. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>Carries {} of {}</source>
        <translation>Trägt {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Certain: covered, tagged, and shown by a marker.</source>
        <translation>Sicher: mit Hülle, mit Etikett und durch einen Marker gezeigt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Change how it was raised on its card first.</source>
        <translation>Zuerst auf der Karteikarte ändern, wie herangezogen wurde.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>Change or remove what names it first.</source>
        <translation>Zuerst ändern oder entfernen, was darauf verweist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Change the candidates.</source>
        <translation>Die Kandidaten ändern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Change the records by hand.</source>
        <translation>Die Aufzeichnungen von Hand ändern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Change them by hand.</source>
        <translation>Von Hand ändern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Check the code.</source>
        <translation>Den Code prüfen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>Choose 'seed' for the seed parent or 'pollen' for the pollen parent.</source>
        <translation>„seed“ für den Samenelter oder „pollen“ für den Pollenelter wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Choose a file that ends in .pedbook.</source>
        <translation>Eine Datei mit der Endung .pedbook wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/worker.py"/>
        <source>Choose a focus, or fewer generations.</source>
        <translation>Einen Fokus oder weniger Generationen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <source>Choose a line that was raised here; a name is changed on its card.</source>
        <translation>Eine hier herangezogene Linie wählen; ein Name wird auf ihrer Karteikarte geändert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_html.py"/>
        <source>Choose a name that ends in .html.</source>
        <translation>Einen Namen mit der Endung .html wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <location filename="../../pedigreeview/reports/report_pdf.py"/>
        <source>Choose a name that ends in .pdf.</source>
        <translation>Einen Namen mit der Endung .pdf wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>Choose a name that ends in {}.</source>
        <translation>Einen Namen mit der Endung {} wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Choose a plant of the same kind.</source>
        <translation>Eine Pflanze derselben Art wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/notes.py"/>
        <source>Choose a record that is there.</source>
        <translation>Eine vorhandene Aufzeichnung wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/measured.py"/>
        <source>Choose a score or a measure.</source>
        <translation>Eine Bonitur oder ein Maß wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Choose a score, a measure, a category or yes/no.</source>
        <translation>Bonitur, Maß, Kategorie oder ja/nein wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Choose another code, such as '{}-1'.</source>
        <translation>Einen anderen Code wählen, etwa „{}-1“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>Choose another code.</source>
        <translation>Einen anderen Code wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>Choose another lot, or correct a date.</source>
        <translation>Anderen Pollen wählen oder ein Datum berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <source>Choose another name.</source>
        <translation>Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/ancestry.py"/>
        <source>Choose another parent, or correct the older link first.</source>
        <translation>Einen anderen Elter wählen oder zuerst die ältere Verbindung berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Choose another parent, skip the cross, or correct the status.</source>
        <translation>Einen anderen Elter wählen, die Kreuzung auslassen oder den Status berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/view.py"/>
        <source>Choose another plant as the focus.</source>
        <translation>Eine andere Pflanze als Fokus wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>Choose another pollen parent, or record the selfing.</source>
        <translation>Einen anderen Pollenelter wählen oder die Selbstung aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/moving.py"/>
        <source>Choose another position, or move that plant in the same step.</source>
        <translation>Eine andere Position wählen oder jene Pflanze im selben Schritt umsetzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>Choose another, such as '{}-1'.</source>
        <translation>Einen anderen wählen, etwa „{}-1“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>Choose another.</source>
        <translation>Ein anderes wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>Choose another; a code is never used twice, also not that of a plant that is gone.</source>
        <translation>Einen anderen wählen; ein Code wird nie zweimal verwendet, auch nicht der einer gelöschten Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>Choose at most {} and print the rest afterwards.</source>
        <translation>Höchstens {} wählen und den Rest danach drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>Choose fertile, poor or sterile.</source>
        <translation>Fruchtbar, schlecht oder steril wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>Choose fewer dpi, or SVG or PDF.</source>
        <translation>Weniger dpi wählen, oder SVG oder PDF.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/choosing.py"/>
        <source>Choose fewer, or add candidates.</source>
        <translation>Weniger wählen oder Kandidaten hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Choose from: {}.</source>
        <translation>Wählen aus: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>Choose one of the book's traits.</source>
        <translation>Eines der Merkmale des Buchs wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wanted.py"/>
        <source>Choose one of them.</source>
        <translation>Eines davon wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>Choose one of {}, or write its measures, such as 'A4 3x8 70x36' or 'roll 60x25'.</source>
        <translation>Wählen aus {}, oder die Maße schreiben, etwa „A4 3x8 70x36“ oder „roll 60x25“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>Choose one of {}.</source>
        <translation>Wählen aus {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <location filename="../../pedigreeview/drawing/theme.py"/>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>Choose one of: {}.</source>
        <translation>Wählen aus: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>Choose the traits to score.</source>
        <translation>Die zu bonitierenden Merkmale wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>Choose two plants or more.</source>
        <translation>Zwei Pflanzen oder mehr wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>Choose two plants, or record a selfing.</source>
        <translation>Zwei Pflanzen wählen oder eine Selbstung aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>Choose what is there.</source>
        <translation>Vorhandenes wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>Choose what is to be labelled.</source>
        <translation>Wählen, was Etiketten bekommen soll.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <source>Choose what is to become of it first.</source>
        <translation>Zuerst wählen, was daraus werden soll.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>Coancestry with {}</source>
        <translation>Verwandtschaft θ mit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Coancestry θ</source>
        <translation>Verwandtschaft θ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>Correct a date or the parent, or record the cutting or the seed that kept it.</source>
        <translation>Ein Datum oder den Elter berichtigen, oder den Steckling oder Samen aufzeichnen, der sie erhielt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <source>Correct a parent of one of these plants; the likeliest is the one that was sown last.</source>
        <translation>Einen Elter einer dieser Pflanzen berichtigen; am ehesten den der zuletzt gesäten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>Correct a parent, or record it as a selfing.</source>
        <translation>Einen Elter berichtigen oder als Selbstung aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>Correct its ploidy, or record how it was doubled.</source>
        <translation>Die Ploidie berichtigen oder die Verdopplung aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/blooms.py"/>
        <source>Correct one of the days.</source>
        <translation>Einen der Tage berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Correct the code of the cross, or leave one of the two blank.</source>
        <translation>Den Code der Kreuzung berichtigen oder eines der beiden leer lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>Correct the count that is wrong.</source>
        <translation>Die falsche Zahl berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Correct the crop of one of them or the parents of the cross; accept it if the crops do cross.</source>
        <translation>Die Kulturart von einem der beiden oder die Eltern der Kreuzung berichtigen; hinnehmen, wenn sich die Kulturarten kreuzen lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>Correct the date of the pollination, the seed parent or the bloom.</source>
        <translation>Das Datum der Bestäubung, den Samenelter oder die Blühzeit berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>Correct the date that is wrong, or the record that it is tied to.</source>
        <translation>Das falsche Datum berichtigen oder die Aufzeichnung, an der es hängt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>Correct the date, the parent or the status.</source>
        <translation>Das Datum, den Elter oder den Status berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>Correct the day, the month or the year.</source>
        <translation>Tag, Monat oder Jahr berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>Correct the day.</source>
        <translation>Den Tag berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>Correct the month.</source>
        <translation>Den Monat berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>Correct the ploidy of a parent, or the parentage.</source>
        <translation>Die Ploidie eines Elters oder die Abstammung berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/spread.py"/>
        <source>Correct the ploidy of the founders, if it is wrong.</source>
        <translation>Die Ploidie der Gründer berichtigen, wenn sie falsch ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>Correct the ploidy of the parent, or record the plant as a founder.</source>
        <translation>Die Ploidie des Elters berichtigen oder die Pflanze als Gründer aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Correct the pollen lot or the pollen parent of the cross.</source>
        <translation>Den aufbewahrten Pollen oder den Pollenelter der Kreuzung berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Correct the records and do it again.</source>
        <translation>Die Aufzeichnungen berichtigen und noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/label_checks.py"/>
        <source>Correct the tag, or the cross of one of them.</source>
        <translation>Das Etikett berichtigen oder die Kreuzung von einem davon.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>Correct the year.</source>
        <translation>Das Jahr berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Correct them.</source>
        <translation>Berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Correct these scores first, or keep the scale wide enough for them.</source>
        <translation>Zuerst diese Bonituren berichtigen oder die Skala weit genug lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/packets.py"/>
        <source>Count corrected from {} to {}.</source>
        <translation>Zahl berichtigt von {} auf {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Count the fruits set of {}.</source>
        <translation>Angesetzte Früchte von {} zählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Count the seedlings of the sowing {} of {}.</source>
        <translation>Sämlinge der Aussaat {} von {} zählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Crop</source>
        <translation>Kulturart</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>Cross {} is made with {} of odd ploidy ({}x).</source>
        <translation>Kreuzung {} ist gemacht mit {} von ungerader Ploidie ({}x).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>Cross {} joins {}, which differ in ploidy.</source>
        <translation>Kreuzung {} verbindet {}, deren Ploidie verschieden ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Cross {}{}</source>
        <translation>Kreuzung {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Crosses made with it</source>
        <translation>Damit gemachte Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>Crossing list</source>
        <translation>Kreuzungsliste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>Crossing plan</source>
        <translation>Kreuzungsplan</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Culled</source>
        <translation>Verworfen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Cutting, division or other clone</source>
        <translation>Steckling, Teilung oder anderer Klon</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Cytoplasm</source>
        <translation>Zytoplasma</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>Cytoplasm, by seed-parent line</source>
        <translation>Zytoplasma, nach Samenelterlinie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Dashed ring: the plant whose card lies open</source>
        <translation>Gestrichelter Ring: die Pflanze, deren Karteikarte offen liegt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Dashed tag: a cross only tried out, not in the book</source>
        <translation>Gestricheltes Etikett: eine nur probierte Kreuzung, nicht im Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Date the {} {} a year on, {}.</source>
        <translation>Ein Jahr später datieren: {} {}, {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>Date: ____________   by: ________   of the plant itself / of the seed that it bore</source>
        <translation>Datum: ____________   von: ________   an der Pflanze selbst / am Samen, den sie trug</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Delete that character.</source>
        <translation>Dieses Zeichen löschen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>Did you mean {}?</source>
        <translation>War {} gemeint?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/tetraploid.py"/>
        <source>Doses among the progeny: {}.</source>
        <translation>Dosen unter den Nachkommen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Dotted sign: a cross planned or skipped, no seed yet</source>
        <translation>Gepunktetes Zeichen: eine Kreuzung geplant oder ausgelassen, noch kein Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>Double reduction is taken as {}.</source>
        <translation>Doppelreduktion angenommen mit {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Doubled form or doubled haploid</source>
        <translation>Verdoppelte Form oder Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <location filename="../../pedigreeview/reports/sheets.py"/>
        <source>Drawn on {}.</source>
        <translation>Gezeichnet am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/progeny_test.py"/>
        <source>Each kept plant breeds true with {}%: test {} of them with {} seedlings each, {} in all, to hold one that breeds true with {}% assurance.</source>
        <translation>Jede behaltene Pflanze ist mit {}% reinerbig: {} davon mit je {} Sämlingen testen, {} insgesamt, um mit {}% Sicherheit eine reinerbige zu haben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Each plant of the line beside all plants of its cross, itself among them, in every trait that was scored on it. A mean is over the plants scored.</source>
        <translation>Jede Pflanze der Linie neben allen Pflanzen ihrer Kreuzung, sie selbst darunter, in jedem Merkmal, das an ihr bonitiert wurde. Ein Mittel geht über die bonitierten Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Evidence</source>
        <translation>Belege</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Exchange the two dates of {}: emasculated {}, pollinated {}.</source>
        <translation>Die zwei Daten von {} tauschen: kastriert {}, bestäubt {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Exchange the two days of the bloom of {}: {} to {}.</source>
        <translation>Die zwei Tage der Blühzeit von {} tauschen: {} bis {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>Expect few seeds or none; correct the ploidy if it is wrong.</source>
        <translation>Wenig oder keinen Samen erwarten; die Ploidie berichtigen, wenn sie falsch ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Expected share of its heredity</source>
        <translation>Erwarteter Anteil an seinem Erbgut</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>F = F of the {} that it came from</source>
        <translation>F = F der Herkunft ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>F = c · ½[γ(F of seed parent) + γ(F of pollen parent)] + (1 − c) · θ(seed parent, pollen parent), c = {}</source>
        <translation>F = c · ½[γ(F des Samenelters) + γ(F des Pollenelters)] + (1 − c) · θ(Samenelter, Pollenelter), c = {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>F = e + (1 − e) γ(F of the parent), e = {}</source>
        <translation>F = e + (1 − e) γ(F des Elters), e = {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>F = the fixation assumed of the founder</source>
        <translation>F = die für den Gründer angenommene Fixierung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>F = the fixation stated for the line, else 1</source>
        <translation>F = die für die Linie angegebene Fixierung, sonst 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>F above {}</source>
        <translation>F über {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>F of a cross = θ(seed parent, pollen parent); of a selfing = θ(parent, itself)</source>
        <translation>F einer Kreuzung = θ(Samenelter, Pollenelter); einer Selbstung = θ(Elter, er selbst)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>F of the progeny is {}.</source>
        <translation>F der Nachkommen ist {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>F, the inbreeding coefficient, is the chance that the two alleles of a plant at one gene came down from the same allele of a founder. Coancestry θ is the same chance for one allele drawn from each of two plants. Founders count as unrelated with one another.</source>
        <translation>F, der Inzuchtkoeffizient, ist die Wahrscheinlichkeit, dass die beiden Allele einer Pflanze an einem Gen vom selben Allel eines Gründers stammen. Verwandtschaft θ ist dieselbe Wahrscheinlichkeit für je ein gezogenes Allel von zwei Pflanzen. Gründer gelten als untereinander nicht verwandt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Faded: culled or lost</source>
        <translation>Verblasst: verworfen oder verloren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Faint: beside what is looked at, or not fitting the filter</source>
        <translation>Blass: neben dem Betrachteten oder nicht zum Filter passend</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>Families sown, in the order of the book. Counted from the stake.</source>
        <translation>Ausgesäte Familien in der Reihenfolge des Buchs. Vom Pfahl aus gezählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sowings.py"/>
        <source>Fill in one of the two.</source>
        <translation>Eines der beiden ausfüllen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Fill it in.</source>
        <translation>Ausfüllen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Findings on single plants</source>
        <translation>Befunde an einzelnen Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>First flower of {}{}.</source>
        <translation>Erste Blüte von {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Fixation</source>
        <translation>Fixierung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>Flowers and fruits are not written down for both directions.</source>
        <translation>Blüten und Früchte sind nicht für beide Richtungen aufgeschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>Flowers of one plant on one day are not independent, so p is at best a guide.</source>
        <translation>Blüten einer Pflanze an einem Tag sind nicht unabhängig; p ist daher höchstens ein Anhalt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>For sowing, not for eating.</source>
        <translation>Zur Aussaat, nicht zum Essen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>For the first cross: {}</source>
        <translation>Für die erste Kreuzung: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Found: the plants' own parentage, not what the cross was meant to be</source>
        <translation>Befund: die eigene Abstammung der Pflanzen, nicht was die Kreuzung werden sollte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Founder</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/painter.py"/>
        <source>Founders</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>From the book '{}'</source>
        <translation>Aus dem Buch „{}“</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>Fruit set: {} of {} flowers with {} as the seed parent ({}), {} of {} with {} ({}); difference {} points, likely between {} and {}.</source>
        <translation>Fruchtansatz: {} von {} Blüten mit {} als Samenelter ({}), {} von {} mit {} ({}); Unterschied {} Punkte, wahrscheinlich zwischen {} und {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>Fruits of {} take a lasting label {} days after pollination.</source>
        <translation>Früchte von {} bekommen {} Tage nach der Bestäubung ein dauerhaftes Etikett.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>Fruits set</source>
        <translation>Angesetzte Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>Fruits set of the flowers that were worked, and how many of these were lost since.</source>
        <translation>Angesetzte Früchte der bestäubten Blüten, und wie viele davon seither abgefallen sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/painter.py"/>
        <source>Gen. {}</source>
        <translation>Gen. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Generation</source>
        <translation>Generation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Generation by generation</source>
        <translation>Generation für Generation</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/packets.py"/>
        <source>Germination tested: {}.</source>
        <translation>Keimung geprüft: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Give as many codes as plants, or none.</source>
        <translation>So viele Codes wie Pflanzen angeben oder keinen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/label_checks.py"/>
        <source>Give one of them another code, or make them one.</source>
        <translation>Einem davon einen anderen Code geben oder sie zu einem machen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Give this one a later date, or take the other away.</source>
        <translation>Diesem ein späteres Datum geben oder das andere entfernen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Go back to a backup, or rescue what can be read into a new book.</source>
        <translation>Zu einer Sicherung zurückkehren oder Lesbares in ein neues Buch retten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Grains: from the pollen parent</source>
        <translation>Körner: vom Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_plan.py"/>
        <source>Grow {} plants to have {} wanted {} or more with {}% assurance</source>
        <translation>{} Pflanzen heranziehen, um mindestens {} gewünschte {} zu haben, mit {}% Sicherheit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/progeny_test.py"/>
        <source>Grow {} seedlings of each plant: a carrier shows itself with {}%, and a plant without one recessive seedling is still a carrier with {}%.</source>
        <translation>{} Sämlinge jeder Pflanze heranziehen: Ein Träger zeigt sich mit {}%, und eine Pflanze ohne einen rezessiven Sämling ist mit {}% dennoch ein Träger.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Growing</source>
        <translation>Wachsen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Grown from seed of a variety or family</source>
        <translation>Aus Samen einer Sorte oder Familie herangezogen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Grown from seed of {}, whose plants mated with each other.</source>
        <translation>Aus Samen von {} herangezogen, deren Pflanzen sich untereinander bestäubten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Grown from seed of {}.</source>
        <translation>Aus Samen von {} herangezogen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Grown from the cross {}. {}</source>
        <translation>Aus der Kreuzung {} herangezogen. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Harvest of {}{}, into a new packet{}.</source>
        <translation>Ernte von {}{}, in eine neue Samentüte{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Harvest {} of {}, pollinated on {}.</source>
        <translation>Ernten: {} von {}, bestäubt am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Harvested</source>
        <translation>Geerntet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Hatched bar: F is withheld</source>
        <translation>Schraffierter Balken: F wird zurückgehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Hatched edge: from parents not known</source>
        <translation>Schraffierter Rand: von unbekannten Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>How far it is fixed</source>
        <translation>Wie weit fixiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>How sure the parents are</source>
        <translation>Wie sicher die Eltern sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>How {} and {} are connected</source>
        <translation>Wie {} und {} zusammenhängen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>If you trust its records, rescue them into a new book.</source>
        <translation>Wenn den Aufzeichnungen zu trauen ist, sie in ein neues Buch retten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>In each field: the cross, then flowers wanted, done and set; below is room to write.</source>
        <translation>In jedem Feld: die Kreuzung, dann Blüten gewünscht, bestäubt und angesetzt; darunter ist Platz zum Schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>In flower</source>
        <translation>In Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>In general</source>
        <translation>Allgemein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/overview_painter.py"/>
        <source>In loops</source>
        <translation>In Schleifen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>In one step no F2 plant can be what is wanted.</source>
        <translation>In einem Schritt kann keine F2-Pflanze die gewünschte sein.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>In one step: {} F2 plants for {}% assurance.{}</source>
        <translation>In einem Schritt: {} F2-Pflanzen für {}% Sicherheit.{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>In the book within the minute: the tag can be lost. Clean fingers and brush between plants.</source>
        <translation>In derselben Minute ins Buch: Das Etikett kann verloren gehen. Finger und Pinsel zwischen den Pflanzen reinigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>In the pattern '{}' the number runs into the code before it.</source>
        <translation>Im Muster „{}“ läuft die Nummer in den Code davor.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>In the selfed progeny no difference is shown, which speaks for the mother plant (or for chance) rather than for the cytoplasm.</source>
        <translation>In den geselbsteten Nachkommen ist kein Unterschied nachgewiesen; das spricht eher für die Mutterpflanze (oder den Zufall) als für das Zytoplasma.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>In two steps: grow {} F2 plants, keep {} {} of {}, and grow {} from each: {} plants in all, {}% assurance.</source>
        <translation>In zwei Schritten: {} F2-Pflanzen heranziehen, {} {} behalten ({}) und aus jeder {} heranziehen: {} Pflanzen insgesamt, {}% Sicherheit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/moving.py"/>
        <source>In {} stands {} already.</source>
        <translation>In {} steht schon {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Inbreeding F</source>
        <translation>Inzucht F</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Inbreeding, relatives and founder shares</source>
        <translation>Inzucht, Verwandte und Gründeranteile</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/application.py"/>
        <source>Install it with the package manager of the system and try again.</source>
        <translation>Mit der Paketverwaltung des Systems installieren und noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Is it stable?</source>
        <translation>Ist die Linie stabil?</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>It cannot be written as text: a plant behind it is among its own ancestors.</source>
        <translation>Lässt sich nicht als Text schreiben: Eine Pflanze dahinter ist unter ihren eigenen Ahnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>It descends from {}.</source>
        <translation>Stammt von {} ab.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>It had</source>
        <translation>Sie hatte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>It has no two parents.</source>
        <translation>Hat keine zwei Eltern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>It has {}.</source>
        <translation>Vorhanden: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wanted.py"/>
        <source>It has: {}.</source>
        <translation>Vorhanden: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>It is</source>
        <translation>Ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>It is not said how many fruits set.</source>
        <translation>Es ist nicht gesagt, wie viele Früchte angesetzt sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>It is not said how many plants.</source>
        <translation>Es ist nicht gesagt, wie viele Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>It is not said what to note of which plant.</source>
        <translation>Es ist nicht gesagt, was zu welcher Pflanze zu notieren ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>It is not said what to {}.</source>
        <translation>Es ist nicht gesagt, worum es geht: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>It still segregates for {}: {}.</source>
        <translation>Spaltet noch auf für {}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>It was</source>
        <translation>War</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>Its alleles are {}.</source>
        <translation>Die Allele sind {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>Its columns do not fit side by side: they go on over {} parts, each with the first columns again.</source>
        <translation>Die Spalten passen nicht nebeneinander: Sie gehen über {} Teile weiter, jeder wieder mit den ersten Spalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Its cytoplasm is that of {}.</source>
        <translation>Das Zytoplasma ist das von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Its own finding overrides what its cross says.</source>
        <translation>Der eigene Befund geht dem vor, was die Kreuzung sagt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>Judged by {} plant that stands for the line.</source>
        <translation>Beurteilt nach {} Pflanze, die für die Linie steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>Judged by {} plants that stand for the line.</source>
        <translation>Beurteilt nach {} Pflanzen, die für die Linie stehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Kept</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Kept beside it: {}.</source>
        <translation>Daneben behalten: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Kept true</source>
        <translation>Sortenecht gehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>Kerr et al. 2012 for polysomic inheritance (abstract read); Malécot 1948 (from memory)</source>
        <translation>Kerr et al. 2012 zur polysomen Vererbung (Zusammenfassung gelesen); Malécot 1948 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Label {} of {} for harvest.</source>
        <translation>Für die Ernte etikettieren: {} von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>Labels are written as PDF.</source>
        <translation>Etiketten werden als PDF geschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/worker.py"/>
        <source>Laying out the picture</source>
        <translation>Das Bild wird angeordnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>Leave the cell blank where a parent is not known.</source>
        <translation>Die Zelle leer lassen, wo ein Elter unbekannt ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Leave the column blank, or record the trait again.</source>
        <translation>Die Spalte leer lassen oder das Merkmal wieder aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Leave the row blank, or record it elsewhere.</source>
        <translation>Die Zeile leer lassen oder anderswo aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Left edge: shares of the founders</source>
        <translation>Linker Rand: Anteile der Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>Left out as accidental selfs: {}.</source>
        <translation>Ausgelassen als versehentliche Selbstungen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>Left out, as their own finding names another pollen parent: {}.</source>
        <translation>Ausgelassen, da ihr eigener Befund einen anderen Pollenelter nennt: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>Less than 1%</source>
        <translation>Weniger als 1%</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>Less than {}.</source>
        <translation>Weniger als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Lighter, with odds: perhaps its pollen</source>
        <translation>Heller, mit Wahrscheinlichkeit: vielleicht der Pollen davon</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Lines lit up: the paths between the two that are compared</source>
        <translation>Leuchtende Linien: die Wege zwischen den beiden, die verglichen werden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>Lists are written as PDF.</source>
        <translation>Listen werden als PDF geschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>Look at it as it is now and do it again.</source>
        <translation>Den jetzigen Stand ansehen und noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Look at its card.</source>
        <translation>Die Karteikarte ansehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Look at what is new, then undo again if you still want to.</source>
        <translation>Das Neue ansehen, dann bei Bedarf noch einmal rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <source>Look it up among the plants.</source>
        <translation>Unter den Pflanzen nachsehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Look it up, or record it first.</source>
        <translation>Nachsehen oder zuerst aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Lower bar: inbreeding F, from 0 to 1</source>
        <translation>Unterer Balken: Inzucht F, von 0 bis 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Lower them; what is missing to 1 is left unknown.</source>
        <translation>Niedriger ansetzen; was zu 1 fehlt, bleibt unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Made {}.</source>
        <translation>Gemacht {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Make room on it and do it again, or save a copy on another disk.</source>
        <translation>Darauf Platz schaffen und noch einmal versuchen, oder eine Kopie auf einem anderen Datenträger speichern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Make the parent '{}' not known wherever it stands.</source>
        <translation>Den Elter „{}“ überall als unbekannt führen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/label_checks.py"/>
        <source>Make them one plant if they are; else give one another name.</source>
        <translation>Zu einer Pflanze machen, wenn sie es sind; sonst einer einen anderen Namen geben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Make {} the pollen parent of {}.</source>
        <translation>{} zum Pollenelter von {} machen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>Malécot 1948; Wright 1922 (both from memory)</source>
        <translation>Malécot 1948; Wright 1922 (beide aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>Map of the beds</source>
        <translation>Beetplan</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/choosing.py"/>
        <source>Mean coancestry {}; no choice can go below {}, so at most {} is lost.</source>
        <translation>Mittlere Verwandtschaft θ {}; keine Auswahl kommt unter {}, also gehen höchstens {} verloren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>Measure the sheet again; it is written as 'A4 3x8 70x36': columns, rows, then the width and height of one label in millimetres.</source>
        <translation>Den Bogen noch einmal messen; geschrieben wird er wie „A4 3x8 70x36“: Spalten, Zeilen, dann Breite und Höhe eines Etiketts in Millimetern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/measured.py"/>
        <source>Measured are: {}.</source>
        <translation>Gemessen sind: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Members mated with each other</source>
        <translation>Mitglieder untereinander bestäubt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/faults.py"/>
        <source>Mend what is listed and open the file again.</source>
        <translation>Das Aufgeführte berichtigen und die Datei noch einmal öffnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>More fruits were set or harvested than flowers were pollinated.</source>
        <translation>Es sind mehr Früchte angesetzt oder geerntet, als Blüten bestäubt wurden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>More seedlings came up than were sown, or more were kept than came up.</source>
        <translation>Es sind mehr Sämlinge aufgelaufen als gesät, oder mehr behalten als aufgelaufen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>More seeds were sown from a packet than it held.</source>
        <translation>Aus einer Samentüte wurden mehr Samen gesät, als sie enthielt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Most seed is up two to four weeks after sowing.</source>
        <translation>Der meiste Samen läuft zwei bis vier Wochen nach der Aussaat auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/moving.py"/>
        <source>Moved from </source>
        <translation>Umgesetzt von </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>Name a line of the book.</source>
        <translation>Eine Linie des Buchs angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/scores.py"/>
        <source>Name each once.</source>
        <translation>Jedes einmal nennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>Name each part once.</source>
        <translation>Jeden Teil einmal nennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>Name fewer of them and print the rest afterwards.</source>
        <translation>Weniger davon nennen und den Rest danach drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Name its cross first.</source>
        <translation>Zuerst die Kreuzung angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>Name its plants, or print row stakes for it.</source>
        <translation>Die Pflanzen angeben oder dafür Reihenpfähle drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>Name the codes of what is to be labelled all the same.</source>
        <translation>Die Codes angeben, die trotzdem Etiketten bekommen sollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Name the crop: in a table add a column 'crop', for example 'pepper'; in a folder set the crop or the outcrossing rate of the book.</source>
        <translation>Die Kulturart angeben: in einer Tabelle eine Spalte „crop“ hinzufügen, zum Beispiel „pepper“; in einem Ordner die Kulturart oder die Fremdbefruchtungsrate des Buchs einstellen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Name the cross, or the variety, of the plants.</source>
        <translation>Die Kreuzung oder die Sorte der Pflanzen angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Name the family whose members mated with each other.</source>
        <translation>Die Familie angeben, deren Mitglieder sich untereinander bestäubten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Name the one plant that it came from, or record the variety as kept by cuttings, tubers or division if it is one genotype.</source>
        <translation>Die eine Pflanze angeben, von der sie stammt, oder die Sorte als durch Stecklinge, Knollen oder Teilung erhalten aufzeichnen, wenn sie ein Genotyp ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Name the parents if they are known; a plant that waits to be used can stay.</source>
        <translation>Die Eltern angeben, wenn sie bekannt sind; eine Pflanze, die auf Verwendung wartet, kann bleiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>Name the plant it came from.</source>
        <translation>Die Pflanze angeben, von der sie stammt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>Name the plants to be scored.</source>
        <translation>Die zu bonitierenden Pflanzen angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>Name the pollinations to be counted again.</source>
        <translation>Die Bestäubungen angeben, die neu zu zählen sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Name the seed parent and the pollen parent.</source>
        <translation>Samenelter und Pollenelter angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>Name the seed parent first.</source>
        <translation>Zuerst den Samenelter angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Name the seed parent of the cross first.</source>
        <translation>Zuerst den Samenelter der Kreuzung angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Name the seed parent, or take 'self' out of the odds and findings first.</source>
        <translation>Den Samenelter angeben oder zuerst „self“ aus Wahrscheinlichkeiten und Befunden nehmen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/lookup.py"/>
        <source>Name the {}.</source>
        <translation>Angeben: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <source>Named '{}', from the line {}.</source>
        <translation>Benannt „{}“, aus der Linie {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>Neither of the two best is rejected, though {} plants should tell them apart.</source>
        <translation>Keines der beiden besten ist verworfen, obwohl {} Pflanzen sie unterscheiden sollten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>Neither side is said.</source>
        <translation>Keine Seite ist angegeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/blooms.py"/>
        <source>Neither the first nor the last flower is dated.</source>
        <translation>Weder die erste noch die letzte Blüte ist datiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/statistics.py"/>
        <source>No chromosome map of {} is known</source>
        <translation>Keine Chromosomenkarte von {} ist bekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>No cross is planned, and none was worked on {}.</source>
        <translation>Keine Kreuzung ist geplant, und keine wurde am {} bestäubt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/printed_sheets.py"/>
        <source>No garden sheet {} was printed from this book.</source>
        <translation>Aus diesem Buch wurde kein Gartenblatt {} gedruckt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>No gene of this book says how {} is inherited.</source>
        <translation>Kein Gen dieses Buchs sagt, wie {} vererbt wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>No gene of this book says how {} {} is inherited.</source>
        <translation>Kein Gen dieses Buchs sagt, wie {} ({}) vererbt wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/direction.py"/>
        <source>No gene on record shows a self in either direction: cover the flowers well.</source>
        <translation>Kein aufgezeichnetes Gen zeigt eine Selbstung in einer der Richtungen: die Blüten gut umhüllen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>No grade is on record for: {}.</source>
        <translation>Keine Stufe ist aufgezeichnet für: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>No odds are proposed for the cross {}.</source>
        <translation>Für die Kreuzung {} ist keine Wahrscheinlichkeit vorgeschlagen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source>No off-type</source>
        <translation>Kein Abweicher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/choosing.py"/>
        <source>No other {} of these crosses have a lower mean coancestry than {}.</source>
        <translation>Keine anderen {} dieser Kreuzungen haben eine niedrigere mittlere Verwandtschaft θ als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>No plan in two steps within a bed of {} reaches that.</source>
        <translation>Kein Plan in zwei Schritten in einem Beet von {} erreicht das.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>No plant by {} from these parents shows all that is wanted.</source>
        <translation>Keine Pflanze über {} aus diesen Eltern zeigt alles Gewünschte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source>No plant of it has been looked at.</source>
        <translation>Davon wurde noch keine Pflanze angesehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>No plant of the book grows.</source>
        <translation>Keine Pflanze des Buchs wächst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>No plant that grows has a place.</source>
        <translation>Keine wachsende Pflanze hat einen Platz.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>No pollination of {} is recorded.</source>
        <translation>Keine Bestäubung von {} ist aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/lookup.py"/>
        <source>No {} is named.</source>
        <translation>Nicht angegeben: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/choosing.py"/>
        <source>No {} of these crosses keep to the conditions.</source>
        <translation>Keine {} dieser Kreuzungen erfüllen die Bedingungen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>None of its gene pairs are alike by descent; its seed will vary as its parents differ.</source>
        <translation>Keines der Genpaare ist durch Abstammung gleich; der Samen variiert, wie sich die Eltern unterscheiden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>None of the ratios tried fits this count.</source>
        <translation>Keines der geprüften Spaltungsverhältnisse passt zu dieser Zählung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>None of the {} families alone departs from it.</source>
        <translation>Von den {} Familien weicht für sich keine davon ab.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>None of these plants is scored for {}.</source>
        <translation>Keine dieser Pflanzen ist bonitiert für {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Not known: the line of seed parents ends in the unknown.</source>
        <translation>Unbekannt: Die Linie der Samenelter endet im Unbekannten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>Not related by anything in this book.</source>
        <translation>Nach allem in diesem Buch nicht verwandt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <source>Not within this bed: {}.</source>
        <translation>Nicht in diesem Beet: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Notch: kept selection</source>
        <translation>Kerbe: behaltene Auslese</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Note on {}: {}</source>
        <translation>Notiz zu {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/hanging.py"/>
        <source>Nothing hangs on {}.</source>
        <translation>An {} hängt nichts.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Nothing is typed in yet.</source>
        <translation>Noch ist nichts eingetippt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Nothing is typed yet.</source>
        <translation>Noch ist nichts getippt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Obtained from</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>Of the ratios tried only this one fits: {}.</source>
        <translation>Von den geprüften Spaltungsverhältnissen passt nur dieses: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Of them</source>
        <translation>Davon</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>On a roll printing begins with label 1.</source>
        <translation>Auf einer Rolle beginnt der Druck mit Etikett 1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>On its cross {}: {}</source>
        <translation>Zur Kreuzung {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>On record as protected: {}.</source>
        <translation>Als geschützt aufgezeichnet: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>On record: {}</source>
        <translation>Aufgezeichnet: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>On {} a cover may come off {} days after pollination.</source>
        <translation>Bei {} kann eine Hülle {} Tage nach der Bestäubung abgenommen werden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/hanging.py"/>
        <source>On {} hang {}.</source>
        <translation>An {} hängen {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>One flower tag stands on pollinations of different crosses in one year.</source>
        <translation>Ein Blütenetikett steht in einem Jahr an Bestäubungen verschiedener Kreuzungen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>One row for each pollination. The tag on the flower says the same as the row.</source>
        <translation>Eine Zeile je Bestäubung. Das Etikett an der Blüte sagt dasselbe wie die Zeile.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>One step asks for no more plants and saves a season.</source>
        <translation>Ein einziger Schritt braucht nicht mehr Pflanzen und spart eine Saison.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>Only the selfed progeny differ: the plants that were selfed may have differed, or the labels or beds; the cytoplasm alone would show before too.</source>
        <translation>Nur die geselbsteten Nachkommen unterscheiden sich: Die geselbsteten Pflanzen können verschieden gewesen sein, oder die Etiketten oder Beete; das Zytoplasma allein hätte sich auch vorher gezeigt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>Only totals are on record, so no test is possible: write down each fruit's seeds.</source>
        <translation>Nur Summen sind aufgezeichnet, daher ist keine Prüfung möglich: die Samen jeder Frucht aufschreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>Only {} chosen plants and {} progeny stand behind this.</source>
        <translation>Dahinter stehen nur {} gewählte Pflanzen und {} Nachkommen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>Only {} families stand behind this slope.</source>
        <translation>Hinter dieser Steigung stehen nur {} Familien.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>Only {} families: how far they differ is hardly known.</source>
        <translation>Nur {} Familien: Wie weit sie sich unterscheiden, ist kaum bekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>Only {} plants were measured: take the order as a hint, not a ranking.</source>
        <translation>Nur {} Pflanzen wurden gemessen: Die Reihenfolge ist ein Hinweis, keine Rangliste.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Open end: parent not known</source>
        <translation>Offenes Ende: Elter unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Open questions of the book's checks</source>
        <translation>Offene Fragen aus den Prüfungen des Buchs</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Open-pollinated seed of a crop without an outcrossing rate.</source>
        <translation>Frei abgeblühter Samen einer Kulturart ohne Fremdbefruchtungsrate.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Out of</source>
        <translation>Aus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Parentage</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Parents</source>
        <translation>Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>Parents and progeny were measured in different years without a variety grown in both: the difference between the years is part of the response.</source>
        <translation>Eltern und Nachkommen wurden in verschiedenen Jahren gemessen, ohne eine in beiden angebaute Sorte: Der Unterschied der Jahre steckt im Selektionserfolg.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>Part them by a dash: '{{}}-{{}}'.</source>
        <translation>Durch einen Strich trennen: „{{}}-{{}}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Pedigree</source>
        <translation>Stammbaum</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/application.py"/>
        <source>Pictures cannot be drawn: a library of the desktop is missing ({}).</source>
        <translation>Bilder lassen sich nicht zeichnen: Eine Bibliothek der Arbeitsumgebung fehlt ({}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>Plan crosses first, or name another season.</source>
        <translation>Zuerst Kreuzungen planen oder eine andere Saison angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>Plan crosses first, or name those that are to be on the list.</source>
        <translation>Zuerst Kreuzungen planen oder die angeben, die auf die Liste sollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Plant health: seed, cuttings and plants that cross a border need papers, in a letter too; the plant-health service says which.</source>
        <translation>Pflanzengesundheit: Samen, Stecklinge und Pflanzen, die eine Grenze überqueren, brauchen Papiere, auch im Brief; welche, sagt der Pflanzenschutzdienst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Plant-variety rights: parents may be protected. Breeding with them and private use are often free, but patents and the licence on a packet may say otherwise; ask before anything is sold or passed on.</source>
        <translation>Sortenschutz: Eltern können geschützt sein. Züchtung damit und privater Gebrauch sind oft frei; Patente und die Lizenz auf einer Samentüte können anderes sagen. Vor Verkauf oder Weitergabe nachfragen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Pollen parent is</source>
        <translation>Pollenelter ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>Pollinate {} flowers for {} true seedlings with {}% assurance; {} would give them on average.</source>
        <translation>{} Blüten bestäuben für {} echte Sämlinge mit {}% Sicherheit; {} ergäben sie im Mittel.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Pollinate {} when both are in flower.</source>
        <translation>{} bestäuben, wenn beide blühen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Pollinate {}.</source>
        <translation>{} bestäuben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Pollinated</source>
        <translation>Bestäubt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Pollination of {}{}{}.</source>
        <translation>Bestäubung von {}{}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Pollination {}: {} set{}.</source>
        <translation>Bestäubung {}: {} angesetzt{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/gene_drop.py"/>
        <source>Pools stand behind pools over too many generations for a gene drop.</source>
        <translation>Pools stehen über zu viele Generationen hinter Pools für einen Gendrop.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/spread.py"/>
        <source>Pools stand behind pools over too many generations for the spread of shares.</source>
        <translation>Pools stehen über zu viele Generationen hinter Pools für die Streuung der Anteile.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Possible: one of named candidates.</source>
        <translation>Möglich: einer der genannten Kandidaten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Probable: worked by hand, tag read.</source>
        <translation>Wahrscheinlich: von Hand bestäubt, Etikett gelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Progeny</source>
        <translation>Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Protected</source>
        <translation>Geschützt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Put '{}' in the place of '{}' everywhere.</source>
        <translation>Überall „{}“ anstelle von „{}“ setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Put the drive or folder back, or save a copy elsewhere and go on in that.</source>
        <translation>Das Laufwerk oder den Ordner zurückbringen, oder anderswo eine Kopie speichern und darin weiterarbeiten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>Put the file in again, or go back to a backup that has it.</source>
        <translation>Die Datei wieder einfügen oder zu einer Sicherung zurückkehren, die sie enthält.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Put the scores of '{}' to '{}'.</source>
        <translation>Die Bonituren von „{}“ zu „{}“ nehmen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/harvests.py"/>
        <source>Put the seed into a packet of its own.</source>
        <translation>Den Samen in eine eigene Samentüte geben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Put this one in its place, or give it another date.</source>
        <translation>Diesen an seine Stelle setzen oder ein anderes Datum geben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Raise fewer, or correct how many came up.</source>
        <translation>Weniger heranziehen oder berichtigen, wie viele aufgelaufen sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Read it here, and get the newer version to write in it.</source>
        <translation>Hier lesen; zum Schreiben die neuere Version holen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/printed_sheets.py"/>
        <source>Read the number in the box at the top of the sheet again.</source>
        <translation>Die Nummer im Kasten oben auf dem Blatt noch einmal lesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Reasons are on record for {} more that were let go.</source>
        <translation>Gründe sind für {} weitere aufgezeichnet, die ausschieden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Reciprocal pair: both directions</source>
        <translation>Reziprokes Paar: beide Richtungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Record it first.</source>
        <translation>Zuerst aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Record it first: 'pollinate {} 8 flowers'.</source>
        <translation>Zuerst aufzeichnen: „pollinate {} 8 flowers“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Record the cross first: 'TP x BA'.</source>
        <translation>Zuerst die Kreuzung aufzeichnen: „TP x BA“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>Record the cross with that plant as its pollen parent.</source>
        <translation>Die Kreuzung mit jener Pflanze als Pollenelter aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>Record the places of plants first.</source>
        <translation>Zuerst die Plätze der Pflanzen aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Record the selfing, or its open-pollinated seed, and raise the plants from that.</source>
        <translation>Die Selbstung oder den frei abgeblühten Samen aufzeichnen und die Pflanzen daraus heranziehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Record the trait first.</source>
        <translation>Zuerst das Merkmal aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/lookup.py"/>
        <source>Record the {} first, or correct the code.</source>
        <translation>Zuerst {} aufzeichnen oder den Code berichtigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>Record what was sown first.</source>
        <translation>Zuerst aufzeichnen, was gesät wurde.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>Record what you score first.</source>
        <translation>Zuerst aufzeichnen, was bonitiert wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Record {} as a selfing of {}.</source>
        <translation>{} als Selbstung von {} aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Ring: the focus</source>
        <translation>Ring: der Fokus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>Row by row; positions are counted from the stake, which stands at the left.</source>
        <translation>Reihe für Reihe; Positionen zählen vom Pfahl aus, der links steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>Sampled, error up to {}.</source>
        <translation>Stichprobe, Fehler bis {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Save a copy elsewhere and write in that, or free the file and its folder.</source>
        <translation>Anderswo eine Kopie speichern und darin schreiben, oder die Datei und ihren Ordner freigeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>Say of its pollinations how the bud was, or set the odds yourself.</source>
        <translation>Bei den Bestäubungen angeben, wie die Knospe war, oder die Wahrscheinlichkeit selbst setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wanted.py"/>
        <source>Say whether {} shall be high or low.</source>
        <translation>Angeben, ob {} hoch oder niedrig sein soll.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wanted.py"/>
        <source>Say which value of {} is wanted.</source>
        <translation>Angeben, welcher Wert von {} gewünscht ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Score '{}' of {} of {} plants of {}: {}.</source>
        <translation>„{}“ bonitieren an {} von {} Pflanzen von {}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>Score more plants, or take one mean for all years.</source>
        <translation>Mehr Pflanzen bonitieren oder ein Mittel für alle Jahre nehmen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Score that one, or choose another name.</source>
        <translation>Jenes bonitieren oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>Score them, or pick another trait.</source>
        <translation>Bonitieren oder ein anderes Merkmal wählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>Score two or more plants in two or more families.</source>
        <translation>Zwei oder mehr Pflanzen in zwei oder mehr Familien bonitieren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>Scored as</source>
        <translation>Bonitiert als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Scored on</source>
        <translation>Bonitiert an</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>Scored on {} and the plants that stand for it; numbers are means over the plants.</source>
        <translation>Bonitiert an {} und den Pflanzen, die dafür stehen; Zahlen sind Mittel über die Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Scores</source>
        <translation>Bonituren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>Searched: {} demands for a kept F2 plant, 1 to {} plants kept, rows of 1 to {} (all lengths to 20, then steps of 5%), within a bed of {}.</source>
        <translation>Geprüft: {} Anforderungen an eine behaltene F2-Pflanze, 1 bis {} behaltene Pflanzen, Reihen von 1 bis {} (alle Längen bis 20, dann Schritte von 5%), in einem Beet von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <source>Searched: {} schemes of up to {} generations after the F1, {} or {} kept plants, the same number of plants in every generation up to {}, and for each trait the generation from which on it is demanded of a kept plant.</source>
        <translation>Durchsucht: {} Pläne mit bis zu {} Generationen nach der F1, {} oder {} behaltene Pflanzen, gleich viele Pflanzen in jeder Generation, höchstens {}, und für jedes Merkmal die Generation, ab der es von einer behaltenen Pflanze verlangt wird.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>Season {}. </source>
        <translation>Saison {}. </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Second edge: a variety or a family</source>
        <translation>Zweiter Rand: eine Sorte oder Familie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>See how it is written in the book.</source>
        <translation>Nachsehen, wie es im Buch geschrieben ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>See how it is written there.</source>
        <translation>Nachsehen, wie es dort geschrieben ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>See the problems of the book for the place and the mend.</source>
        <translation>Stelle und Abhilfe stehen bei den Problemen des Buchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/printing.py"/>
        <source>See whether it is switched on, or print to a PDF file.</source>
        <translation>Prüfen, ob er eingeschaltet ist, oder in eine PDF-Datei drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <location filename="../../pedigreeview/reports/report_pdf.py"/>
        <source>See whether it is switched on, or save it as PDF.</source>
        <translation>Prüfen, ob er eingeschaltet ist, oder als PDF speichern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <location filename="../../pedigreeview/reports/report_pdf.py"/>
        <source>See whether the folder can be written to and whether the disk is full.</source>
        <translation>Prüfen, ob der Ordner beschreibbar und der Datenträger nicht voll ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>See whether the folder exists and can be written to, and whether the disk is full.</source>
        <translation>Prüfen, ob es den Ordner gibt, ob er beschreibbar und ob der Datenträger voll ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>Seed parent first: the plant that will bear the fruit. A selfing: ⊗ as pollen parent.</source>
        <translation>Zuerst der Samenelter: die Pflanze, die die Frucht tragen wird. Bei Selbstung: ⊗ als Pollenelter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Seed parent is</source>
        <translation>Samenelter ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>Seen {}, expected for {}: {}.</source>
        <translation>Gesehen {}, erwartet für {}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Selection</source>
        <translation>Auslese</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Selfed {} time more, with no plant recorded in between.</source>
        <translation>Noch {} Mal geselbstet, ohne aufgezeichnete Pflanze dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Selfed {} times more, with no plants recorded in between.</source>
        <translation>Noch {} Mal geselbstet, ohne aufgezeichnete Pflanzen dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Selfings of one plant each, folded</source>
        <translation>Selbstungen von je einer Pflanze, eingeklappt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Selfings that were not recorded</source>
        <translation>Selbstungen, die nicht aufgezeichnet wurden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/direction.py"/>
        <source>Selfs show in both directions. {}</source>
        <translation>Selbstungen zeigen sich in beiden Richtungen. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/harvests.py"/>
        <source>Set it to made first if it bore seed after all.</source>
        <translation>Zuerst auf gemacht setzen, falls sie doch Samen trug.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>Set it to planned first if it is to be made after all.</source>
        <translation>Zuerst auf geplant setzen, falls sie doch gemacht werden soll.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the crop of {} to {}.</source>
        <translation>Kulturart von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the first flower of {} to {}.</source>
        <translation>Erste Blüte von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the flowers of {} to {}.</source>
        <translation>Blüten von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the fruits of {} to {}.</source>
        <translation>Früchte von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the last flower of {} to {}.</source>
        <translation>Letzte Blüte von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the seeds sown of {} to {}.</source>
        <translation>Gesäte Samen von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set the sowing of {} to {}.</source>
        <translation>Aussaat von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set what came up of {} to {}.</source>
        <translation>Aufgelaufene von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set what was kept of {} to {}.</source>
        <translation>Behaltene von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set what {} has left to {}.</source>
        <translation>Rest von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set what {} held to {}.</source>
        <translation>Anfangsmenge von {} auf {} setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set {} to finished: it lived until it was used.</source>
        <translation>Status von {} auf fertig setzen: Sie lebte, bis sie verbraucht war.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Set {} to growing.</source>
        <translation>Status von {} auf wächst setzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Sets of chromosomes</source>
        <translation>Chromosomensätze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>Share of {}</source>
        <translation>Anteil von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>Sib mating is within a family or a variety.</source>
        <translation>Geschwisterpaarung gibt es nur innerhalb einer Familie oder Sorte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Sibs folded into a pack</source>
        <translation>Geschwister, zu einem Stapel eingeklappt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Skip the cross {}.</source>
        <translation>Kreuzung {} auslassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Slash notation</source>
        <translation>Schrägstrich-Schreibweise</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Something is dated before what must have come first.</source>
        <translation>Etwas ist früher datiert als das, was ihm vorausgehen muss.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Something of the cross {} is called a self, so its seed parent must be known.</source>
        <translation>Etwas aus der Kreuzung {} heißt Selbstung, also muss ihr Samenelter bekannt sein.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/packets.py"/>
        <source>Sow fewer, or correct the count of the packet if more were in it.</source>
        <translation>Weniger säen, oder die Zahl der Samentüte berichtigen, falls mehr darin waren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Sow {}, as planned for {}.</source>
        <translation>{} säen, wie geplant für {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Sow {}{}{} in the packet {}: {}.</source>
        <translation>Säen: {}{}{} in der Samentüte {}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Sowing of {}{}{}.</source>
        <translation>Aussaat: {}{}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Sown</source>
        <translation>Gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Sown or struck</source>
        <translation>Gesät oder gesteckt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/scores.py"/>
        <source>Start further up or left, or copy a smaller block.</source>
        <translation>Weiter oben oder links beginnen, oder einen kleineren Block kopieren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>State a higher fixation, or leave it blank for a line that is fixed.</source>
        <translation>Eine höhere Fixierung angeben, oder bei einer fixierten Linie leer lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/statistics.py"/>
        <source>State the crop of the book.</source>
        <translation>Die Kulturart des Buchs angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Status</source>
        <translation>Status</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Still unlike by descent (1 − F)</source>
        <translation>Der Abstammung nach noch ungleich (1 − F)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>TP x BA 12 flowers bag tag 17 today</source>
        <translation>TP x BA 12 flowers bag tag 17 today</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>TP x BA both</source>
        <translation>TP x BA both</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Tabs: more parents above, more progeny below; a click shows them</source>
        <translation>Reiter: oben weitere Eltern, unten weitere Nachkommen; ein Klick zeigt sie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>Take the blank away.</source>
        <translation>Das Leerzeichen entfernen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Take the fixation off {}, so that it follows from its parents.</source>
        <translation>Fixierung bei {} entfernen, damit sie aus den Eltern folgt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Take the pollen lot {} off {}.</source>
        <translation>Pollenprobe {} bei {} entfernen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>Take the report on the plant itself, or name a plant that was raised from a cross.</source>
        <translation>Den Bericht für die Pflanze selbst nehmen, oder eine Pflanze nennen, die aus einer Kreuzung stammt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>Take the {} off {}.</source>
        <translation>Hülle abnehmen ({}): {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Take the {}x off {}, so that it has that of its parents.</source>
        <translation>{}x bei {} entfernen, damit die Ploidie der Eltern gilt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>Take {}, or record it as a repeated cross.</source>
        <translation>{} nehmen, oder als wiederholte Kreuzung aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>Taken as</source>
        <translation>Gilt als</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>That is</source>
        <translation>Das ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source>That is more than the {} allowed where 1% is tolerated.</source>
        <translation>Das sind mehr als die {}, die bei 1% Toleranz erlaubt sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>That of {}, through seed parents alone.</source>
        <translation>Das von {}, allein über Samenelter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/scores.py"/>
        <source>The block has {} {}{}, and from here the grid has {}.</source>
        <translation>Der Block hat {} {}{}, und ab hier hat die Tabelle {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>The book does not say what the seed of the sowing {} came from.</source>
        <translation>Das Buch sagt nicht, woher der Samen der Aussaat {} kam.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>The book does not say whether these are protected: {}.</source>
        <translation>Das Buch sagt nicht, ob diese geschützt sind: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>The book has no crosses {}.</source>
        <translation>Das Buch hat keine Kreuzungen {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>The book has no sowings.</source>
        <translation>Das Buch hat keine Aussaaten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>The book has no traits.</source>
        <translation>Das Buch hat keine Merkmale.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>The book has {}.</source>
        <translation>Das Buch hat {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>The book holds no file {}.</source>
        <translation>Das Buch enthält keine Datei {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>The book is being written in by {}.</source>
        <translation>In das Buch schreibt gerade: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/book_file.py"/>
        <source>The book is closed.</source>
        <translation>Das Buch ist geschlossen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>The book is damaged{}.</source>
        <translation>Das Buch ist beschädigt{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>The book is no longer there.</source>
        <translation>Das Buch ist nicht mehr da.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/opening_files.py"/>
        <source>The book is of an older version and was not brought up to date, because no backup of it could be made: {}</source>
        <translation>Das Buch ist von einer älteren Version und wurde nicht aktualisiert, weil keine Sicherung davon gemacht werden konnte: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/opening_files.py"/>
        <source>The book was opened for reading.</source>
        <translation>Das Buch wurde nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>The book's traits: {}.</source>
        <translation>Merkmale des Buchs: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>The category '{}' has fewer than two values.</source>
        <translation>Die Kategorie „{}“ hat weniger als zwei Werte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code is blank.</source>
        <translation>Der Code ist leer.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code pattern '{}' gives no code that may stand.</source>
        <translation>Das Codemuster „{}“ ergibt keinen zulässigen Code.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The code {} begins or ends with a blank.</source>
        <translation>Der Code {} beginnt oder endet mit einem Leerzeichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The code {} has ':' or ';' in it, which part candidates and lists.</source>
        <translation>Der Code {} enthält „:“ oder „;“; diese trennen Kandidaten und Listen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code {} has ':' or ';' in it, which part lists.</source>
        <translation>Der Code {} enthält „:“ oder „;“; diese trennen Listen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code {} has a blank before or after it.</source>
        <translation>Der Code {} hat ein Leerzeichen davor oder danach.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code {} has a sign in it that cannot be seen.</source>
        <translation>Der Code {} enthält ein unsichtbares Zeichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The code {} has the character U+{} in it.</source>
        <translation>Der Code {} enthält das Zeichen U+{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code {} is the word for the seed parent itself.</source>
        <translation>Der Code {} ist das Wort für den Samenelter selbst.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>The code {} {}.</source>
        <translation>Der Code {} {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>The codes {} {}.</source>
        <translation>Die Codes {} {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>The coefficients of {} are withheld: they depend on {}.</source>
        <translation>Die Koeffizienten von {} sind zurückgehalten: Sie hängen ab von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>The count {} {}.</source>
        <translation>Die Zählung {} zu: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/statistics.py"/>
        <source>The crop is not stated</source>
        <translation>Die Kulturart ist nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>The cross of {} has no seed parent, so it cannot be a self.</source>
        <translation>Die Kreuzung von {} hat keinen Samenelter, kann also keine Selbstung sein.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>The cross {} has no plants that still grow.</source>
        <translation>Die Kreuzung {} hat keine Pflanzen, die noch wachsen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>The cross {} has no seed parent, so 'self' can be no candidate.</source>
        <translation>Die Kreuzung {} hat keinen Samenelter, also kann „self“ kein Kandidat sein.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>The cross {} has {} fruits harvested of {} flowers pollinated.</source>
        <translation>Die Kreuzung {} hat {} geerntete Früchte bei {} bestäubten Blüten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>The cross {} has {}, so it was made.</source>
        <translation>Die Kreuzung {} hat {}, wurde also gemacht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>The cross {} is of {} ({}) and {} ({}), which are different crops.</source>
        <translation>Die Kreuzung {} ist von {} ({}) und {} ({}); das sind verschiedene Kulturarten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>The cross {} is planned with {}, which is {}.</source>
        <translation>Die Kreuzung {} ist geplant mit {}, Stand: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>The cross {} is {} × {}, not with {}.</source>
        <translation>Die Kreuzung {} ist {} × {}, nicht mit {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>The cross {} was made on</source>
        <translation>Die Kreuzung {} wurde gemacht am</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/harvests.py"/>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>The cross {} was skipped.</source>
        <translation>Die Kreuzung {} wurde ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>The cross {} was worked on {} with {}, which was {} on {}.</source>
        <translation>Die Kreuzung {} wurde bearbeitet am {} mit {}; Status: {} am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>The cross {} was worked on {}, but {} flowered from {}{}.</source>
        <translation>Die Kreuzung {} wurde bearbeitet am {}, aber {} blühte ab {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>The cross {} {}, so its seed is a selfing.</source>
        <translation>Die Kreuzung {} {}; ihr Samen ist also eine Selbstung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>The cross {} × {} is in the book as {}.</source>
        <translation>Die Kreuzung {} × {} steht im Buch als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>The day is blank.</source>
        <translation>Der Tag ist leer.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>The difference stays in the selfed progeny, which speaks for the cytoplasm.</source>
        <translation>Der Unterschied bleibt bei den geselbsteten Nachkommen; das spricht für das Zytoplasma.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>The disk is full; nothing was changed.</source>
        <translation>Der Datenträger ist voll; nichts wurde geändert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>The evidence says nothing.</source>
        <translation>Der Beleg sagt nichts.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>The families differ no more than their plants do by chance: no order is shown.</source>
        <translation>Die Familien unterscheiden sich nicht mehr als ihre Pflanzen durch Zufall: keine Rangfolge gezeigt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>The figure lies outside 0 to 1: chance, or years that differ.</source>
        <translation>Die Zahl liegt außerhalb von 0 bis 1: Zufall, oder verschiedene Jahre.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>The file cannot be written: {}.</source>
        <translation>Die Datei ist nicht beschreibbar: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>The file holds {}, which this program does not make; it was not opened.</source>
        <translation>Die Datei enthält {}; das macht dieses Programm nicht, also wurde sie nicht geöffnet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/opening_files.py"/>
        <source>The file of the book is write-protected, so it can only be read.</source>
        <translation>Die Datei des Buchs ist schreibgeschützt, also ist es nur lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>The finding has no date.</source>
        <translation>Der Befund hat kein Datum.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/opening_files.py"/>
        <source>The folder of the book is write-protected, so the book can only be read.</source>
        <translation>Der Ordner des Buchs ist schreibgeschützt, also ist das Buch nur lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>The founders</source>
        <translation>Die Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>The fruits of every pollination are counted.</source>
        <translation>Die Früchte jeder Bestäubung sind gezählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>The genotype {} has the allele {}, which {} lacks.</source>
        <translation>Der Genotyp {} hat das Allel {}; es fehlt bei {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>The genotype {} has {} alleles for a plant of {}x.</source>
        <translation>Der Genotyp {} hat {} Allele für eine Pflanze mit {}x.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>The harvest {} of the cross {} was on {}, before the cross was made on {}.</source>
        <translation>Die Ernte {} der Kreuzung {} war am {}, bevor die Kreuzung gemacht wurde am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>The heritability is hardly known: anything from {} to {} fits.</source>
        <translation>Die Heritabilität ist kaum bekannt: Alles von {} bis {} passt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>The history of {}</source>
        <translation>Die Geschichte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>The label sheet '{}' {}.</source>
        <translation>Der Etikettenbogen „{}“ {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>The label {} has no room for: {}.</source>
        <translation>Auf dem Etikett {} ist kein Platz für: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>The labels could not be written.</source>
        <translation>Die Etiketten waren nicht schreibbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <location filename="../../pedigreeview/book/recording/blooms.py"/>
        <source>The last flower of {} is dated {}, before its first on {}.</source>
        <translation>Die letzte Blüte von {} ist datiert {}, vor der ersten am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>The line begins with {}.</source>
        <translation>Die Zeile beginnt mit {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>The list could not be written.</source>
        <translation>Die Liste war nicht schreibbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>The locus {} has no allele {}.</source>
        <translation>Das Gen {} hat kein Allel {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>The locus {} has {} phenotypes where its alleles make {}.</source>
        <translation>Das Gen {} hat {} Phänotypen, seine Allele ergeben aber {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>The locus {} needs two or more different alleles.</source>
        <translation>Das Gen {} braucht zwei oder mehr verschiedene Allele.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <source>The name '{}' is that of {}.</source>
        <translation>Der Name „{}“ gehört schon zu {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/label_checks.py"/>
        <source>The names of {} would be read as one.</source>
        <translation>Die Namen von {} würden als einer gelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/notes.py"/>
        <source>The note says nothing.</source>
        <translation>Die Notiz sagt nichts.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>The number of plants is below 1.</source>
        <translation>Die Zahl der Pflanzen ist unter 1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>The odds of the cross {} add up to {}, over 1.</source>
        <translation>Die Wahrscheinlichkeiten der Kreuzung {} ergeben zusammen {}, über 1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>The odds of the finding add up to {}, over 1.</source>
        <translation>Die Wahrscheinlichkeiten des Befunds ergeben zusammen {}, über 1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>The open-pollinated {} {} gave {}, and without a known crop the pollen parent counts as unknown, which is wrong for a crop that selfs.</source>
        <translation>Frei abgeblüht, {} {}: Daraus kam {}, und ohne bekannte Kulturart gilt der Pollenelter als unbekannt; bei einer sich selbstenden Kulturart ist das falsch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>The order of day and month is set to {}.</source>
        <translation>Die Reihenfolge von Tag und Monat ist eingestellt auf {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/packets.py"/>
        <source>The packet {} has {} {} left, and {} {} to be sown.</source>
        <translation>In der Samentüte {} sind noch {} {}, aber {} {} zu säen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>The packet {} held {} seeds but has {} left.</source>
        <translation>Die Samentüte {} enthielt {} Samen, hat aber noch {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>The packet {} held {} seeds but {} were sown from it.</source>
        <translation>Die Samentüte {} enthielt {} Samen, aber {} wurden daraus gesät.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/harvests.py"/>
        <source>The packet {} holds seed {}.</source>
        <translation>Die Samentüte {} enthält Samen {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>The parent '{}' reads like 'not known' but counts as one plant wherever it stands.</source>
        <translation>Der Elter „{}“ liest sich wie „nicht bekannt“, zählt aber überall als eine Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>The parents of a cross are of different crops.</source>
        <translation>Die Eltern einer Kreuzung sind verschiedene Kulturarten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>The parents of a cross have different numbers of chromosome sets.</source>
        <translation>Die Eltern einer Kreuzung haben verschieden viele Chromosomensätze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>The parents of {} differ in ploidy ({}), so its coefficients and those of its progeny are withheld.</source>
        <translation>Die Eltern von {} unterscheiden sich in der Ploidie ({}); die Koeffizienten von ihr und ihren Nachkommen sind also zurückgehalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>The parents' genotypes do not give one ratio for all of these plants.</source>
        <translation>Die Genotypen der Eltern ergeben nicht ein Spaltungsverhältnis für alle diese Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The part {{}} is no number, so it has no width.</source>
        <translation>Der Teil {{}} ist keine Zahl und hat also keine Breite.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The pattern '{}' has a ':', ';' or '=' in it, which part lists.</source>
        <translation>Das Muster „{}“ enthält „:“, „;“ oder „=“; diese trennen Listen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The pattern '{}' has a brace without its partner.</source>
        <translation>Das Muster „{}“ hat eine Klammer ohne Gegenstück.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The pattern '{}' has a part twice.</source>
        <translation>Das Muster „{}“ hat einen Teil doppelt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The pattern '{}' has a part {{}} that is not known.</source>
        <translation>Das Muster „{}“ hat einen unbekannten Teil {{}}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The pattern '{}' has no running number, so all codes would be one.</source>
        <translation>Das Muster „{}“ hat keine laufende Nummer; alle Codes wären gleich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The pattern is blank.</source>
        <translation>Das Muster ist leer.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_blocks.py"/>
        <location filename="../../pedigreeview/reports/report_html.py"/>
        <source>The photo {} is not with the book or cannot be shown.</source>
        <translation>Das Foto {} ist nicht beim Buch oder nicht anzeigbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/worker.py"/>
        <source>The picture could not be laid out: its process ended.</source>
        <translation>Das Bild war nicht anzuordnen: Sein Prozess endete.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>The picture could not be written.</source>
        <translation>Das Bild war nicht schreibbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>The plants of {}</source>
        <translation>Die Pflanzen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>The pollen is of no plant.</source>
        <translation>Der Pollen ist von keiner Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>The pollen is of one plant, so the pollen parent is certain.</source>
        <translation>Der Pollen ist von einer einzigen Pflanze, also ist der Pollenelter sicher.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>The pollen parent of {} is given as candidates with odds.</source>
        <translation>Für den Pollenelter von {} sind Kandidaten mit Wahrscheinlichkeit angegeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>The pollen {} was collected on {}, after {}.</source>
        <translation>Der Pollen {} wurde gesammelt am {}, nach {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>The pollination {} of the cross {}</source>
        <translation>Die Bestäubung {} der Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>The pollination {} of the cross {} has {} fruits {} of {} flowers.</source>
        <translation>Die Bestäubung {} der Kreuzung {} hat {} Früchte {} bei {} Blüten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>The pollination {} of the cross {} used the pollen lot {} of {}, not of a pollen parent of the cross.</source>
        <translation>Die Bestäubung {} der Kreuzung {} nutzte die Pollenprobe {} von {}, nicht von einem Pollenelter der Kreuzung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>The pollination {} of {} was on</source>
        <translation>Die Bestäubung {} von {} war am</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>The pollination {} was on {}, after {}.</source>
        <translation>Die Bestäubung {} war am {}, nach {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>The pollination {} would have {} fruits lost of {} set.</source>
        <translation>Bei der Bestäubung {} wären {} Früchte abgefallen von {} angesetzten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_pdf.py"/>
        <source>The printer did not take it.</source>
        <translation>Der Drucker nahm es nicht an.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>The printer did not take the paper.</source>
        <translation>Der Drucker nahm das Papier nicht an.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/printing.py"/>
        <source>The printer did not take the picture.</source>
        <translation>Der Drucker nahm das Bild nicht an.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/book_file.py"/>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>The records do not fit together: {}.</source>
        <translation>Die Aufzeichnungen passen nicht zusammen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_pdf.py"/>
        <source>The report could not be written.</source>
        <translation>Der Bericht war nicht schreibbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>The row names no pollen parent.</source>
        <translation>Die Zeile nennt keinen Pollenelter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>The row names no seed parent and no cross.</source>
        <translation>Die Zeile nennt weder Samenelter noch Kreuzung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>The rules of the place come first, then licensed advice and practice; nothing in this report stands in for either.</source>
        <translation>Die Regeln des Ortes gehen vor, dann geprüfter Rat und Praxis; nichts in diesem Bericht ersetzt sie.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>The same as {}.</source>
        <translation>Dasselbe wie {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>The same by names</source>
        <translation>Dem Namen nach gleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>The scale of '{}' ends at {}, not above {}.</source>
        <translation>Die Skala von „{}“ endet bei {}, nicht über {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>The scale of '{}' has no lowest or no highest score.</source>
        <translation>Die Skala von „{}“ hat keine niedrigste oder keine höchste Bonitur.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>The seed keeps {}, cool and dry.</source>
        <translation>Der Samen hält {}, kühl und trocken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>The seed parent stands first, on the left.</source>
        <translation>Der Samenelter steht zuerst, links.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>The sheet names no trait, or one that is not in the book.</source>
        <translation>Das Blatt nennt kein Merkmal, oder eines, das nicht im Buch steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>The side {} is neither seed nor pollen.</source>
        <translation>Die Seite {} ist weder Samen noch Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>The sowing {} has {} {} but {} {}.</source>
        <translation>Die Aussaat {} hat {} {}, aber {} {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>The sowing {} was on {}, before its cross {} was made on {}.</source>
        <translation>Die Aussaat {} war am {}, bevor ihre Kreuzung {} gemacht wurde am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>The sowing {} was on {}, before its seed was harvested on {} ({}).</source>
        <translation>Die Aussaat {} war am {}, bevor ihr Samen geerntet wurde am {} ({}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/spread.py"/>
        <source>The spread of shares is known for even ploidies alone.</source>
        <translation>Die Streuung der Anteile ist nur für gerade Ploidien bekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>The standard error is so large that the figure says little.</source>
        <translation>Der Standardfehler ist so groß, dass die Zahl wenig sagt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/label_checks.py"/>
        <source>The tag {} stands on {} of {}, which are of the crosses {}.</source>
        <translation>Das Etikett {} steht an {} von {}; sie gehören zu den Kreuzungen {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>The trait '{}' has no kind.</source>
        <translation>Das Merkmal „{}“ hat keine Art.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>The trait has no name.</source>
        <translation>Das Merkmal hat keinen Namen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>The trait {} is not in the book any more.</source>
        <translation>Das Merkmal {} steht nicht mehr im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/measured.py"/>
        <source>The trait {} is not measured.</source>
        <translation>Das Merkmal {} wird nicht gemessen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>The two directions differ</source>
        <translation>Die beiden Richtungen unterscheiden sich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>The two generations differ in opposite ways, which speaks for mixed-up labels or different beds rather than for the cytoplasm.</source>
        <translation>Die beiden Generationen unterscheiden sich in entgegengesetzter Richtung; das spricht eher für vertauschte Etiketten oder verschiedene Beete als für das Zytoplasma.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/varieties.py"/>
        <source>The variety has neither a code nor a name.</source>
        <translation>Die Sorte hat weder Code noch Namen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <source>The variety has no name.</source>
        <translation>Die Sorte hat keinen Namen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>The way from the founders to {}: the seed parent comes in by an unbroken line, the pollen parent by a line of grains.</source>
        <translation>Der Weg von den Gründern zu {}: Der Samenelter kommt über eine durchgezogene Linie hinein, der Pollenelter über eine Linie aus Körnern.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>The width '{}' of {{}} is no whole number from 1 to {}.</source>
        <translation>Die Breite „{}“ von {{}} ist keine ganze Zahl von 1 bis {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The {} has the character U+{} in it, which no picture can show.</source>
        <translation>{} enthält das Zeichen U+{}, das kein Bild zeigen kann.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>The {} is blank.</source>
        <translation>{}: leer.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <source>The {} was {}, which was deleted.</source>
        <translation>{} war {}, inzwischen gelöscht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>The {} {}</source>
        <translation>{} {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The {} {} are not from 0 to 1.</source>
        <translation>{} {}: nicht von 0 bis 1.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>The {} {} cannot be.</source>
        <translation>{} {}: nicht möglich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The {} {} is below 0.</source>
        <translation>{} {} ist unter 0.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>The {} {} is no date.</source>
        <translation>{} {} ist kein Datum.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>The {} {} is no whole number from {} on.</source>
        <translation>{} {} ist keine ganze Zahl ab {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>The {} {} is no {} of this book.</source>
        <translation>{} {} steht nicht in diesem Buch als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The {} {} is none of the words for it.</source>
        <translation>{} {} ist keines der Wörter dafür.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>The {} {} is not one of the words for it.</source>
        <translation>{} {} ist keines der Wörter dafür.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>The {} {} is too large.</source>
        <translation>{} {} ist zu groß.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/scores.py"/>
        <source>The {} {} stands twice in the grid.</source>
        <translation>{} {} steht zweimal in der Tabelle.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/label_checks.py"/>
        <source>The {} {} would be read as one {}.</source>
        <translation>{} {}: würden als eins gelesen ({}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>Their parents cannot give {}: foreign pollen, a volunteer, a misread plant or a mixed-up label.</source>
        <translation>Ihre Eltern können {} nicht ergeben: Fremdpollen, Durchwuchs, eine falsch erkannte Pflanze oder ein vertauschtes Etikett.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>Their ploidies do not go together: expect few seeds or none.</source>
        <translation>Ihre Ploidien passen nicht zusammen: wenige oder keine Samen zu erwarten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Then {} selfing with no plant recorded in between.</source>
        <translation>Dann {} Selbstung ohne aufgezeichnete Pflanze dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Then {} selfings with no plants recorded in between.</source>
        <translation>Dann {} Selbstungen ohne aufgezeichnete Pflanzen dazwischen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>There are few values for each year, so the effects of the years are rough.</source>
        <translation>Je Jahr gibt es wenige Werte, also sind die Jahreseffekte grob.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>There are fewer than two candidates.</source>
        <translation>Es gibt weniger als zwei Kandidaten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>There are no labels for '{}'.</source>
        <translation>Es gibt keine Etiketten für „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>There are no labels to print.</source>
        <translation>Es gibt keine Etiketten zu drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>There are too few measured plants to rank families.</source>
        <translation>Zu wenige gemessene Pflanzen, um Familien zu ordnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>There are too few values for breeding values.</source>
        <translation>Zu wenige Werte für Zuchtwerte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>There is a file or folder of this name.</source>
        <translation>Eine Datei oder einen Ordner dieses Namens gibt es schon.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>There is a trait '{}' already.</source>
        <translation>Das Merkmal „{}“ gibt es schon.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>There is a {} {} already.</source>
        <translation>{} {} gibt es schon.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>There is no bed or row '{}' with plants.</source>
        <translation>Kein Beet und keine Reihe „{}“ mit Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>There is no cross '{}' in the book.</source>
        <translation>Die Kreuzung „{}“ steht nicht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>There is no cross {} in this book.</source>
        <translation>Die Kreuzung {} steht nicht in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>There is no label sheet '{}'.</source>
        <translation>Den Etikettenbogen „{}“ gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>There is no label {} on this sheet.</source>
        <translation>Auf diesem Bogen gibt es kein Etikett {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>There is no locus {} in this book.</source>
        <translation>Das Gen {} steht nicht in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>There is no packet, cross or plant {} in this book.</source>
        <translation>Keine Samentüte, Kreuzung oder Pflanze {} in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>There is no paper '{}'.</source>
        <translation>Das Papier „{}“ gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>There is no plant '{}' in the book.</source>
        <translation>Die Pflanze „{}“ steht nicht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>There is no plant {} in this book.</source>
        <translation>Die Pflanze {} steht nicht in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>There is no pollination '{}' in the book.</source>
        <translation>Die Bestäubung „{}“ steht nicht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>There is no sowing '{}' in the book.</source>
        <translation>Die Aussaat „{}“ steht nicht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>There is no such folder.</source>
        <translation>Diesen Ordner gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/theme.py"/>
        <source>There is no theme '{}'.</source>
        <translation>Das Farbschema „{}“ gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>There is no trait '{}'.</source>
        <translation>Das Merkmal „{}“ gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <location filename="../../pedigreeview/planning/measured.py"/>
        <location filename="../../pedigreeview/planning/wanted.py"/>
        <source>There is no trait {} in this book.</source>
        <translation>Das Merkmal {} steht nicht in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>There is no {} '{}' in the book.</source>
        <translation>{} „{}“ steht nicht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/notes.py"/>
        <source>There is no {} among the {} of this book.</source>
        <translation>{} fehlt in diesem Buch unter: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/lookup.py"/>
        <source>There is no {} {} in this book.</source>
        <translation>{} {} steht nicht in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>There is nothing to print.</source>
        <translation>Es gibt nichts zu drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>There must be at least one label for each.</source>
        <translation>Je mindestens ein Etikett ist nötig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>These cannot all be true: {}. One of the records is wrong.</source>
        <translation>Diese können nicht alle stimmen: {}. Eine der Aufzeichnungen ist falsch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>These numbers are expectations from the recorded parents; they were not measured, and selection can shift them. A wrong parent makes wrong numbers.</source>
        <translation>Diese Zahlen sind Erwartungen aus den aufgezeichneten Eltern; gemessen wurden sie nicht, und Auslese kann sie verschieben. Ein falscher Elter ergibt falsche Zahlen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>These ratios fit, the best first: {}.</source>
        <translation>Diese Spaltungsverhältnisse passen, das beste zuerst: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>These would be more than {} labels.</source>
        <translation>Das wären mehr als {} Etiketten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <source>These would be {} rows.</source>
        <translation>Das wären {} Zeilen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>They do not flower together: {} {} lie between; store pollen.</source>
        <translation>Sie blühen nicht gemeinsam: Abstand {} {}; Pollen aufbewahren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>They flower together on {} {}.</source>
        <translation>Sie blühen gemeinsam: {} {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>Thick box: kept on purpose. Struck through: culled, lost or finished. Empty box: nothing stands there.</source>
        <translation>Dicker Kasten: absichtlich behalten. Durchgestrichen: verworfen, verloren oder fertig. Leerer Kasten: Dort steht nichts.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>This book can only be read.</source>
        <translation>Dieses Buch ist nur lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>This file is no crossing book.</source>
        <translation>Diese Datei ist kein Kreuzungsbuch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/sampler.py"/>
        <source>This pedigree is too tangled for the chances of its genotypes.</source>
        <translation>Dieser Stammbaum ist zu verschlungen für die Wahrscheinlichkeiten seiner Genotypen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_html.py"/>
        <source>This report is written as HTML.</source>
        <translation>Dieser Bericht wird als HTML geschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_pdf.py"/>
        <source>This report is written as PDF.</source>
        <translation>Dieser Bericht wird als PDF geschrieben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>This step cannot be read.</source>
        <translation>Dieser Schritt ist nicht lesbar.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>This {}</source>
        <translation>Diese Aufzeichnung ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Tint: {}, pale to deep</source>
        <translation>Tönung: {}, hell bis kräftig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source>To trust that fewer than {}% are, look at {} plants and see none.</source>
        <translation>Um sicher zu sein, dass es weniger als {}% sind: {} Pflanzen ansehen und keinen finden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>Too few to tell</source>
        <translation>Zu wenige, um es zu sagen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>Too few to tell: a test needs two values or more on each side.</source>
        <translation>Zu wenige, um es zu sagen: Ein Test braucht auf jeder Seite zwei oder mehr Werte.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Took the place of {}.</source>
        <translation>Trat an die Stelle von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>True seedlings</source>
        <translation>Echte Sämlinge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/file_faults.py"/>
        <source>Try again in a moment, or close the other one.</source>
        <translation>Gleich noch einmal versuchen, oder das andere schließen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Two codes differ only by case, blanks, dashes or look-alike signs.</source>
        <translation>Zwei Codes unterscheiden sich nur in Groß- und Kleinschreibung, Leerzeichen, Strichen oder ähnlichen Zeichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Two crosses, packets or other records have codes that read as one.</source>
        <translation>Zwei Kreuzungen, Samentüten oder andere Aufzeichnungen haben Codes, die sich wie einer lesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>Two plants have names that differ only by case, blanks or dashes.</source>
        <translation>Zwei Pflanzen haben Namen, die sich nur in Groß- und Kleinschreibung, Leerzeichen oder Strichen unterscheiden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>Two steps save {} plants and take one season more.</source>
        <translation>Zwei Schritte sparen {} Pflanzen und dauern eine Saison länger.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Type digits alone, or leave it blank.</source>
        <translation>Nur Ziffern eintippen, oder leer lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>Type it anew.</source>
        <translation>Neu eintippen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>Type it like '{}' or '{}'.</source>
        <translation>So eintippen: „{}“ oder „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Type the plant that bears the fruit, or the code of the cross.</source>
        <translation>Die Pflanze eintippen, die die Frucht trägt, oder den Code der Kreuzung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Type the plant that gave the pollen, 'self' or 'open'.</source>
        <translation>Die Pflanze eintippen, die den Pollen gab, „self“ oder „open“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Type what stands on the sheet.</source>
        <translation>Eintippen, was auf dem Blatt steht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>Type {}, or their first letters.</source>
        <translation>{} eintippen, oder die Anfangsbuchstaben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>Typed in by the number of the sheet and of the row; nothing else need be copied.</source>
        <translation>Eingetippt nach der Nummer des Blatts und der Zeile; sonst muss nichts abgeschrieben werden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>Unbroken line: from the seed parent</source>
        <translation>Durchgezogene Linie: vom Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>Unknown: nobody saw.</source>
        <translation>Unbekannt: niemand hat es gesehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/heat_file.py"/>
        <source>Use .svg, .pdf or .png.</source>
        <translation>.svg, .pdf oder .png verwenden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>Use a dash, a dot, a slash or a blank.</source>
        <translation>Strich, Punkt, Schrägstrich oder Leerzeichen verwenden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/notes.py"/>
        <source>Use letters, digits, dots and dashes.</source>
        <translation>Buchstaben, Ziffern, Punkte und Striche verwenden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/targets.py"/>
        <source>Wanted in one plant: {}{}.</source>
        <translation>Gewünscht in einer Pflanze: {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>Wanted: {} {}, one gene in a tetraploid.</source>
        <translation>Gewünscht: {} {}, ein Gen in einer Tetraploiden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>Was {} until this correction. {}</source>
        <translation>War {} bis zu dieser Berichtigung. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <source>Was {} {}, which was deleted.</source>
        <translation>War {} {}, inzwischen gelöscht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>What came of {}: all its descendants.</source>
        <translation>Was aus {} wurde: alle Nachfahren.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>What came of {}: {} that led nowhere left out.</source>
        <translation>Was aus {} wurde: {}, die nirgends hinführten, ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>What segregated on the way</source>
        <translation>Was unterwegs aufspaltete</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>What the numbers rest on</source>
        <translation>Worauf die Zahlen beruhen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>What {} carries at {} is not known.</source>
        <translation>Unbekannt ist, was {} trägt bei {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>Which alleles lie together on a chromosome of {} is not on record; every way is taken as equally likely.</source>
        <translation>Welche Allele zusammen auf einem Chromosom von {} liegen, ist nicht aufgezeichnet; jede Anordnung gilt als gleich wahrscheinlich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>Which of the last plants breed true shows only in their seed.</source>
        <translation>Welche der letzten Pflanzen reinerbig sind, zeigt sich erst an ihrem Samen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>Which plant bore it is not known</source>
        <translation>Welche Pflanze ihn trug, ist unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>Wish for a value that a fixed plant can have.</source>
        <translation>Einen Wert wünschen, den eine fixierte Pflanze haben kann.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>With the sign ×</source>
        <translation>Mit dem Zeichen ×</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>With {}</source>
        <translation>Mit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/direction.py"/>
        <source>With {} as the seed parent and pollen of {}, {} accidental {} seen: {}, where the cross gives {}.</source>
        <translation>Ungewollte Selbstung mit {} als Samenelter und Pollen von {}: {} {} zu sehen: {}, wo die Kreuzung {} gibt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>Without a crop nothing is known of takes and seeds but your own counts.</source>
        <translation>Ohne Kulturart ist von Ansatz und Samen nichts bekannt als die eigenen Zählungen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>Worked</source>
        <translation>Bearbeitet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>Wright 1922 for the paths, Malécot 1948 for θ (both from memory)</source>
        <translation>Wright 1922 für die Pfade, Malécot 1948 für θ (beide aus dem Gedächtnis)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Write 0 or more.</source>
        <translation>0 oder mehr schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>Write 1 or more.</source>
        <translation>1 oder mehr schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_sheets.py"/>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>Write a number from 1 to {}.</source>
        <translation>Eine Zahl von 1 bis {} schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>Write a number, or leave it blank.</source>
        <translation>Eine Zahl schreiben, oder leer lassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>Write a smaller number of days.</source>
        <translation>Eine kleinere Zahl von Tagen schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Write a smaller number.</source>
        <translation>Eine kleinere Zahl schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>Write a whole number, or leave it blank if it is not known.</source>
        <translation>Eine ganze Zahl schreiben, oder leer lassen, wenn unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Write both ends, such as 1 and 9.</source>
        <translation>Beide Enden schreiben, etwa 1 und 9.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>Write down its genotype with all four alleles.</source>
        <translation>Ihren Genotyp mit allen vier Allelen aufschreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>Write down its genotype, or score its {}.</source>
        <translation>Ihren Genotyp aufschreiben, oder sie bonitieren: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>Write each part as {name}.</source>
        <translation>Jeden Teil als {name} schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <source>Write it as 2021, 2021-05 or 2021-05-17.</source>
        <translation>Schreiben als 2021, 2021-05 oder 2021-05-17.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>Write it as 2024-05-03.</source>
        <translation>Schreiben als 2024-05-03.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>Write it as 3.5., 3 May, 2024-05-03, today, yesterday, -2 or Tuesday.</source>
        <translation>Schreiben als 3.5., 3. Mai, 2024-05-03, heute, gestern, -2 oder Dienstag.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>Write it as {{}:2}.</source>
        <translation>Schreiben als {{}:2}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/cell_checks.py"/>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <location filename="../../pedigreeview/book/recording/fields.py"/>
        <source>Write it as {}.</source>
        <translation>Schreiben als {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/notes.py"/>
        <source>Write it.</source>
        <translation>Bitte schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Write its name.</source>
        <translation>Den Namen schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>Write one allele for each set of chromosomes, '?' for one that is not known.</source>
        <translation>Für jeden Chromosomensatz ein Allel schreiben, „?“ für ein unbekanntes.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>Write one code everywhere if they are one plant.</source>
        <translation>Überall einen Code schreiben, falls es eine Pflanze ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>Write one for each, in the order of the alleles, parted by ';'.</source>
        <translation>Je einen schreiben, in der Reihenfolge der Allele, getrennt durch „;“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/blooms.py"/>
        <source>Write one of the days.</source>
        <translation>Einen der Tage schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/varieties.py"/>
        <source>Write one of them.</source>
        <translation>Eines davon schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>Write one such as '{}'.</source>
        <translation>So etwas schreiben wie „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>Write one, or take the one that is proposed.</source>
        <translation>Einen schreiben, oder den vorgeschlagenen nehmen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>Write the code '{}' as '{}'.</source>
        <translation>Den Code „{}“ als „{}“ schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <source>Write the day, such as today.</source>
        <translation>Den Tag schreiben, etwa heute.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>Write the day; the latest holds.</source>
        <translation>Den Tag schreiben; der neueste gilt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>Write the gene and the allele, 'C: c'.</source>
        <translation>Gen und Allel schreiben, „C: c“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Write the lower end as 'low' and say under 'better' which end is good.</source>
        <translation>Das untere Ende als „low“ schreiben und unter „better“ angeben, welches Ende gut ist.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>Write them dominant first, parted by ';'.</source>
        <translation>Die dominanten zuerst schreiben, getrennt durch „;“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Write them parted by ';', such as tall;dwarf.</source>
        <translation>Getrennt durch „;“ schreiben, etwa hoch;zwergig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>Write what was seen.</source>
        <translation>Schreiben, was zu sehen war.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>Write yes or no.</source>
        <translation>Ja oder nein schreiben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>a candidate is not before its progeny</source>
        <translation>ein Kandidat steht nicht vor seinen Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>a candidate is of no row</source>
        <translation>ein Kandidat gehört zu keiner Zeile</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>a cutting of</source>
        <translation>ein Steckling von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>a dominant gene and one that hides it, selfed</source>
        <translation>ein dominantes Gen und eines, das es verdeckt, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>a doubled form of</source>
        <translation>eine verdoppelte Form von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>a doubled haploid of</source>
        <translation>eine Doppelhaploide von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>a family: progeny kept together</source>
        <translation>eine Familie: Nachkommen, zusammengehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>a founder above {}</source>
        <translation>ein Gründeranteil über {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>a founder has a parent</source>
        <translation>ein Gründer hat einen Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>a germination of 80% (common practice, no source)</source>
        <translation>Keimung von 80% (übliche Praxis, ohne Quelle)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>a line whose stated fixation is too low</source>
        <translation>eine Linie mit zu niedrig angegebener Fixierung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>a number from the second on</source>
        <translation>eine Nummer ab der zweiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>a parent of odd ploidy</source>
        <translation>ein Elter mit ungerader Ploidie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>a plant among its own ancestors</source>
        <translation>eine Pflanze unter ihren eigenen Ahnen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>a pure line (fixation 1)</source>
        <translation>eine reine Linie (Fixierung 1)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/opening_files.py"/>
        <source>a row of {} names what is not there</source>
        <translation>eine Zeile von {} nennt, was nicht da ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>a running number{}</source>
        <translation>eine laufende Nummer{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>a selfing of {}</source>
        <translation>eine Selbstung von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>a single plant</source>
        <translation>eine einzelne Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>a variety: a pool of like plants</source>
        <translation>eine Sorte: ein Pool gleicher Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>a volunteer, or a plant with another's label</source>
        <translation>Durchwuchs, oder eine Pflanze mit fremdem Etikett</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/text.py"/>
        <source>about {} × 10^{}</source>
        <translation>etwa {} × 10^{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/references.py"/>
        <source>accepted check</source>
        <translation>akzeptierte Prüfung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>against the pollen parent</source>
        <translation>gegen den Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>against the seed parent</source>
        <translation>gegen den Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/near_duplicates.py"/>
        <source>alike at every locus by descent</source>
        <translation>der Abstammung nach an jedem Gen gleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_layout.py"/>
        <source>all but the code</source>
        <translation>alles außer dem Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wanted.py"/>
        <source>allele {} of {}</source>
        <translation>Allel {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>an unknown plant</source>
        <translation>eine unbekannte Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>an unknown pollen parent</source>
        <translation>ein unbekannter Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/lock_holders.py"/>
        <source>another window of this program</source>
        <translation>ein anderes Fenster dieses Programms</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>any time</source>
        <translation>jederzeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>as even as its parents</source>
        <translation>so einheitlich wie die Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>as its source</source>
        <translation>wie die Quelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>as its {}</source>
        <translation>wie: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>as pollen parent {}</source>
        <translation>als Pollenelter {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>as seed parent {}</source>
        <translation>als Samenelter {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>assumed of the founder</source>
        <translation>für den Gründer angenommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>at least {}% of {}</source>
        <translation>mindestens {}% von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/layers.py"/>
        <source>back {} {} {}</source>
        <translation>back {} {} {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>between the gametes</source>
        <translation>zwischen den Gameten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>between the gametes of the one parent</source>
        <translation>zwischen den Gameten des einen Elters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>between the gametes of two members of the pool</source>
        <translation>zwischen den Gameten zweier Mitglieder des Pools</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>between the gametes, if it was selfed</source>
        <translation>zwischen den Gameten, falls geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>between the gametes: a parent is unknown</source>
        <translation>zwischen den Gameten: ein Elter ist unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>bloom {} to {}</source>
        <translation>Blüte {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>both bring</source>
        <translation>beide bringen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>bud {}</source>
        <translation>Knospe {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/varieties.py"/>
        <source>by cuttings, tubers, grafts or division</source>
        <translation>durch Stecklinge, Knollen, Veredlung oder Teilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/varieties.py"/>
        <source>by its own seed, a mixed population</source>
        <translation>durch eigenen Samen, eine gemischte Population</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/varieties.py"/>
        <source>by its own seed, true to type</source>
        <translation>durch eigenen Samen, sortenecht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/placing.py"/>
        <source>by key</source>
        <translation>nach Schlüssel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/placing.py"/>
        <source>by place</source>
        <translation>nach Platz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>carry {}</source>
        <translation>{} tragen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>chi-square {}, degrees of freedom {}</source>
        <translation>Chi-Quadrat {}, Freiheitsgrade {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>closed unsure open</source>
        <translation>geschlossen unsicher offen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>coancestry above {}</source>
        <translation>Verwandtschaft θ über {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>code pattern</source>
        <translation>Codemuster</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>collected the same day</source>
        <translation>am selben Tag gesammelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/faults.py"/>
        <source>column {}</source>
        <translation>Spalte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/hanging.py"/>
        <source>compatibility records</source>
        <translation>Aufzeichnungen zur Verträglichkeit</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>computed from the parents</source>
        <translation>aus den Eltern berechnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>computed from the parents' doses</source>
        <translation>aus den Dosen der Eltern berechnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>cover: {}</source>
        <translation>Hülle: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>crop: {}</source>
        <translation>Kulturart: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>cross or pollination</source>
        <translation>Kreuzung oder Bestäubung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>cross {}</source>
        <translation>Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>cross, sowing or plant</source>
        <translation>Kreuzung, Aussaat oder Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>crossed before</source>
        <translation>schon gekreuzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>culled</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>cutting of {}</source>
        <translation>Steckling von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/near_duplicates.py"/>
        <source>cuttings of one plant</source>
        <translation>Stecklinge einer Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/making_files.py"/>
        <source>database is locked</source>
        <translation>database is locked</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>day after tomorrow</source>
        <translation>übermorgen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>day ago</source>
        <translation>Tag her</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>day before yesterday</source>
        <translation>vorgestern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/ancestry.py"/>
        <source>descends from {}, which is</source>
        <translation>stammt von {} ab, und das ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>differ only by case, blanks or dashes</source>
        <translation>unterscheiden sich nur in Groß- und Kleinschreibung, Leerzeichen oder Strichen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>differ only by signs that are not seen or that look alike</source>
        <translation>unterscheiden sich nur in Zeichen, die unsichtbar sind oder ähnlich aussehen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>difference {}{}</source>
        <translation>Unterschied {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>does not hold so many labels of this size</source>
        <translation>fasst nicht so viele Etiketten dieser Größe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <source>doubled form of {}</source>
        <translation>verdoppelte Form von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>doubled gamete</source>
        <translation>verdoppelter Gamet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>doubled haploid</source>
        <translation>Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>doubled haploid of {}</source>
        <translation>Doppelhaploide von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>doubled haploids</source>
        <translation>Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <source>doubled haploids of BC{}F1</source>
        <translation>Doppelhaploide von BC{}F1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>duplex in a test cross</source>
        <translation>Duplex in einer Testkreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>duplex selfed</source>
        <translation>Duplex geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>duplex selfed, doses told apart</source>
        <translation>Duplex geselbstet, Dosen unterschieden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>duplex selfed, double reduction 1/7</source>
        <translation>Duplex geselbstet, Doppelreduktion 1/7</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>every rate as likely as another</source>
        <translation>jede Rate so wahrscheinlich wie eine andere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>exact test, as a class is expected in fewer than 5 plants</source>
        <translation>exakter Test, da in einer Klasse weniger als 5 Pflanzen erwartet sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>families have</source>
        <translation>Familien haben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>family has</source>
        <translation>Familie hat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/far.py"/>
        <source>far {}</source>
        <translation>far {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>finished</source>
        <translation>fertig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>first cousins of unrelated plants</source>
        <translation>Cousins ersten Grades aus nicht verwandten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>first flower of {}</source>
        <translation>erste Blüte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>first progeny</source>
        <translation>erste Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>fixation {}</source>
        <translation>Fixierung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>focus {}</source>
        <translation>Fokus {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>for the pollen parent</source>
        <translation>für den Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>for the seed parent</source>
        <translation>für den Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <source>found a self of {}</source>
        <translation>als Selbstung von {} erkannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>founder</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>founder {}</source>
        <translation>Gründer {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/harvests.py"/>
        <source>from elsewhere</source>
        <translation>von außerhalb</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>from seed of</source>
        <translation>aus Samen von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <source>from seed of {}</source>
        <translation>aus Samen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>from sib mating in</source>
        <translation>aus Geschwisterpaarung in</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <source>from sib mating in {}</source>
        <translation>aus Geschwisterpaarung in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>from {} selfed</source>
        <translation>aus {}, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>from {}, palest, to {}, deepest</source>
        <translation>von {}, am hellsten, bis {}, am kräftigsten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_choices.py"/>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>fruit sheet</source>
        <translation>Blatt für Fruchtansatz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>fruits of pollination {}</source>
        <translation>Früchte der Bestäubung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>full sibs, or parent and child, of unrelated plants</source>
        <translation>Vollgeschwister, oder Elter und Nachkomme, aus nicht verwandten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>fully fixed (fixation 1)</source>
        <translation>vollständig fixiert (Fixierung 1)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>further pollen parent</source>
        <translation>weiterer Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/printed_sheets.py"/>
        <source>garden sheet </source>
        <translation>garden sheet </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>generation of the seed</source>
        <translation>Generation des Samens</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/painter.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>generation {}</source>
        <translation>Generation {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/seen.py"/>
        <source>genotype {}</source>
        <translation>Genotyp {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>good until {}</source>
        <translation>gut bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>growing</source>
        <translation>wächst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>half first cousins of unrelated plants</source>
        <translation>Halbcousins ersten Grades aus nicht verwandten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>half sibs of unrelated plants</source>
        <translation>Halbgeschwister aus nicht verwandten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>harvest of {}</source>
        <translation>Ernte von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>has labels too small to print on (under {} mm)</source>
        <translation>hat Etiketten, die zum Bedrucken zu klein sind (unter {} mm)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>has no labels</source>
        <translation>hat keine Etiketten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>has too little behind it to tell</source>
        <translation>stützt sich auf zu wenig, um es zu sagen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/crossing_list.py"/>
        <source>in flower</source>
        <translation>in Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>in the {}, </source>
        <translation>in der {}, </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>in {}</source>
        <translation>in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>inbreeding of progeny</source>
        <translation>Inzucht F der Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/ancestry.py"/>
        <source>is itself</source>
        <translation>ist selbst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>is not stable yet</source>
        <translation>ist noch nicht stabil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>is of {} and {}, which are one genotype</source>
        <translation>ist aus {} und {}, die ein Genotyp sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>is taken</source>
        <translation>ist vergeben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>it has a pollen parent and candidates</source>
        <translation>hat einen Pollenelter und Kandidaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>it has a source and a pollen parent</source>
        <translation>hat eine Quelle und einen Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>it is as even as its parents</source>
        <translation>sie ist so einheitlich wie ihre Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>it names no source</source>
        <translation>nennt keine Quelle</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>its fixation is outside 0 to 1</source>
        <translation>die Fixierung liegt nicht zwischen 0 und 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>its number for raised is not known</source>
        <translation>die Nummer für die Art des Heranziehens ist unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>its own record says so</source>
        <translation>eigene Angabe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>its parents differ in ploidy</source>
        <translation>die Eltern haben verschiedene Ploidie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>its ploidy does not follow from its parent</source>
        <translation>die Ploidie folgt nicht aus der des Elters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>its ploidy is not an even number</source>
        <translation>die Ploidie ist keine gerade Zahl</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>its seed</source>
        <translation>ihr Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>its seed parent itself</source>
        <translation>ihr Samenelter selbst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/opening_files.py"/>
        <source>its version {} is none</source>
        <translation>seine Version {} gibt es nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>its {} parent is not before it</source>
        <translation>der {}elter steht nicht davor</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>kept on purpose</source>
        <translation>absichtlich behalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>leaves no room to print</source>
        <translation>lässt keinen Platz zum Drucken</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>look alike</source>
        <translation>sehen ähnlich aus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/codes.py"/>
        <source>looks like {}, which is taken</source>
        <translation>sieht aus wie {}, und das ist vergeben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>looks stable</source>
        <translation>wirkt stabil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>looks stable as far as it was scored</source>
        <translation>wirkt stabil, soweit bonitiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>lost since</source>
        <translation>seither abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>mean {} of {} plants, {} to {}</source>
        <translation>Mittel {} aus {} Pflanzen, {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/parent_checks.py"/>
        <source>names {} as both parents</source>
        <translation>nennt {} als beide Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/near_duplicates.py"/>
        <source>nearly alike by descent</source>
        <translation>durch Abstammung fast gleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>neither brings</source>
        <translation>keiner bringt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>neither pollinations nor planned crosses</source>
        <translation>weder Bestäubungen noch geplante Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>no bed named</source>
        <translation>kein Beet genannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <location filename="../../pedigreeview/planning/takes.py"/>
        <source>no difference shown</source>
        <translation>kein Unterschied gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>no known parents</source>
        <translation>keine bekannten Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>no packets with seed left</source>
        <translation>keine Samentüten mit restlichem Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/inference.py"/>
        <source>no phenotype misread</source>
        <translation>kein Phänotyp falsch erkannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/moving.py"/>
        <source>no place</source>
        <translation>kein Platz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>no plant has a value</source>
        <translation>keine Pflanze hat einen Wert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>no plants that still grow</source>
        <translation>keine Pflanzen, die noch wachsen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>no pollination that may have set fruit</source>
        <translation>keine Bestäubung, die angesetzt haben kann</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_content.py"/>
        <source>no sowings</source>
        <translation>keine Aussaaten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/board.py"/>
        <source>no take</source>
        <translation>kein Ansatz</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>no test</source>
        <translation>kein Test</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/loci.py"/>
        <source>no {}</source>
        <translation>ohne {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>none of your own yet</source>
        <translation>noch keine eigenen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>none seen, too few to tell</source>
        <translation>keiner gesehen, zu wenige</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/varieties.py"/>
        <source>not at all: a bought F1 hybrid</source>
        <translation>gar nicht: eine gekaufte F1-Hybride</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/packets.py"/>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>not in flower together</source>
        <translation>nicht gleichzeitig in Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>not inbred (fixation 0)</source>
        <translation>nicht ingezüchtet (Fixierung 0)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>not inbred: no gene pair alike by descent</source>
        <translation>nicht ingezüchtet: kein Genpaar durch Abstammung gleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <source>not made</source>
        <translation>nicht gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>not scored</source>
        <translation>nicht bonitiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>not scored in both is</source>
        <translation>nicht in beiden bonitiert ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/hybrid_or_self.py"/>
        <source>not shown</source>
        <translation>nicht gezeigt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>not sown yet</source>
        <translation>noch nicht gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>not stable</source>
        <translation>nicht stabil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/crossing_list.py"/>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>note 23-07 split pods after rain</source>
        <translation>note 23-07 split pods after rain</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>note on {}</source>
        <translation>Notiz zu {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>noted as sterile</source>
        <translation>als steril notiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <source>nothing is noted of how it went</source>
        <translation>über den Verlauf ist nichts notiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>odds lie between 0 and 1</source>
        <translation>Wahrscheinlichkeiten liegen zwischen 0 und 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>of another seed parent, with pollen of {}</source>
        <translation>von einem anderen Samenelter, mit Pollen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/harvests.py"/>
        <source>of the cross {}</source>
        <translation>von der Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>one eighth</source>
        <translation>ein Achtel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>one gene, dominant, F3 grown from all F2 plants</source>
        <translation>ein Gen, dominant, F3 aus allen F2-Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>one gene, dominant, selfed</source>
        <translation>ein Gen, dominant, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>one gene, heterozygotes told apart, selfed</source>
        <translation>ein Gen, Heterozygote erkennbar, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>one gene, test cross or backcross</source>
        <translation>ein Gen, Testkreuzung oder Rückkreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>one half</source>
        <translation>die Hälfte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>one of: {}</source>
        <translation>eines von: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>one parent</source>
        <translation>ein Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>one quarter</source>
        <translation>ein Viertel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>only a pool with parents is taken as fixed</source>
        <translation>nur ein Pool mit Eltern gilt als fixiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>open end</source>
        <translation>offenes Ende</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/look_alikes.py"/>
        <source>open pollinated</source>
        <translation>frei abgeblüht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/parting.py"/>
        <source>open {}</source>
        <translation>offen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>open-pollinated</source>
        <translation>frei abgeblüht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>open-pollinated seed of</source>
        <translation>frei abgeblühter Samen von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/lines.py"/>
        <source>own ancestor</source>
        <translation>eigener Ahn</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>packet or harvest</source>
        <translation>Samentüte oder Ernte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/packets.py"/>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>packet {}</source>
        <translation>Samentüte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <location filename="../../pedigreeview/reports/report_pages.py"/>
        <source>page {} of {}</source>
        <translation>Seite {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/references.py"/>
        <source>parent finding</source>
        <translation>Elternbefund</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/hanging.py"/>
        <source>parent findings of its own</source>
        <translation>eigene Elternbefunde</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/hanging.py"/>
        <source>parent findings that name it</source>
        <translation>Elternbefunde, die sie nennen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>parents not known</source>
        <translation>Eltern unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>parents of different ploidy</source>
        <translation>Eltern mit verschiedener Ploidie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>petal fall</source>
        <translation>Abfallen der Blütenblätter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollinations.py"/>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>petals off</source>
        <translation>Blütenblätter ab</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>plant or cross</source>
        <translation>Pflanze oder Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>plant stays</source>
        <translation>Pflanze bleibt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/faults.py"/>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <location filename="../../pedigreeview/book/recording/moving.py"/>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>plant {}</source>
        <translation>Pflanze {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>plants stay</source>
        <translation>Pflanzen bleiben</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>ploidies that do not go together</source>
        <translation>Ploidien, die nicht zusammenpassen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/references.py"/>
        <source>pollen candidate</source>
        <translation>Pollenkandidat</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>pollen line</source>
        <translation>Pollenelter-Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/lookup.py"/>
        <location filename="../../pedigreeview/book/references.py"/>
        <source>pollen lot</source>
        <translation>Pollenprobe</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <source>pollen parent</source>
        <translation>Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>pollinate 24-03 8 flowers closed yesterday</source>
        <translation>pollinate 24-03 8 flowers closed yesterday</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>pollination of {}</source>
        <translation>Bestäubung von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/layers.py"/>
        <source>progeny {}</source>
        <translation>Nachkommen {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>pure line: all gene pairs alike</source>
        <translation>reine Linie: alle Genpaare gleich</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>pure lines (fixation 1)</source>
        <translation>reine Linien (Fixierung 1)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>raised differs in length from the parents</source>
        <translation>raised hat eine andere Länge als die Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>raised does not know {}</source>
        <translation>raised kennt {} nicht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>raised from {}</source>
        <translation>herangezogen aus {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <source>reciprocal pair: </source>
        <translation>reziprokes Paar: </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <source>reciprocal pair: {}</source>
        <translation>reziprokes Paar: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>refuses its own pollen</source>
        <translation>nimmt eigenen Pollen nicht an</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>ripe from about</source>
        <translation>reif ab etwa</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>roll, labels of {}{}</source>
        <translation>Rolle, Etiketten von {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/faults.py"/>
        <source>row {}</source>
        <translation>Zeile {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>score of {}: {}</source>
        <translation>Bonitur von {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>score {} to {}{}</source>
        <translation>Bonitur {} bis {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>second cousins of unrelated plants</source>
        <translation>Cousins zweiten Grades aus nicht verwandten Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>seed line</source>
        <translation>Samenelter-Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>seed of</source>
        <translation>Samen von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>seed of {}</source>
        <translation>Samen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>seed parent</source>
        <translation>Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <source>seed parent {}, pollen parent {}</source>
        <translation>Samenelter {}, Pollenelter {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>seed_parent and pollen_parent differ in length</source>
        <translation>seed_parent und pollen_parent haben verschiedene Länge</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/counts.py"/>
        <source>seeds sown</source>
        <translation>gesäte Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/direction.py"/>
        <source>self is</source>
        <translation>Selbstung ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>selfed</source>
        <translation>geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/heritability.py"/>
        <source>selfed parent</source>
        <translation>geselbsteter Elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>selfed progeny</source>
        <translation>geselbstete Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <source>selfed, {} sibs each</source>
        <translation>geselbstet, je {} Geschwister</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>selfing of</source>
        <translation>Selbstung von</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>selfings is negative</source>
        <translation>die Zahl der Selbstungen ist negativ</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/direction.py"/>
        <source>selfs are</source>
        <translation>Selbstungen sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>seven eighths</source>
        <translation>sieben Achtel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>sheet {}</source>
        <translation>Blatt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>show {}</source>
        <translation>{} zeigen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>sib mating</source>
        <translation>Geschwisterpaarung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>sib matings</source>
        <translation>Geschwisterpaarungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>sibs mated in {}</source>
        <translation>Geschwisterpaarung in {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>simplex in a test cross</source>
        <translation>Simplex in einer Testkreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>simplex selfed</source>
        <translation>Simplex geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>simplex selfed, doses told apart</source>
        <translation>Simplex geselbstet, Dosen erkennbar</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>so far</source>
        <translation>bisher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>sowing of {}</source>
        <translation>Aussaat von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sowings.py"/>
        <source>sowing {}</source>
        <translation>Aussaat {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>sown from {} to {}</source>
        <translation>gesät {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>sown in {}</source>
        <translation>gesät {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>sown in {} or before</source>
        <translation>gesät {} oder früher</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>sown in {} or later</source>
        <translation>gesät {} oder später</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>still varies</source>
        <translation>streut noch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>tag {}</source>
        <translation>Etikett {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>taken as fixed: a line</source>
        <translation>als fixiert angenommen: eine Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>taken by the book's setting</source>
        <translation>nach der Einstellung des Buchs angenommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>takes its own pollen poorly</source>
        <translation>nimmt eigenen Pollen schlecht an</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>test by {} drawn counts, error of p {}</source>
        <translation>Test mit {} gezogenen Zählungen, Fehler von p {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>test cross</source>
        <translation>Testkreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_html.py"/>
        <source>th scope="col"</source>
        <translation>th scope="col"</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_layout.py"/>
        <source>the QR code</source>
        <translation>den QR-Code</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>the book's settings, or the founder's own record</source>
        <translation>die Einstellungen des Buchs oder die Angabe des Gründers selbst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the code of the cross</source>
        <translation>der Code der Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the code of the cross, or of the plant that was selfed</source>
        <translation>der Code der Kreuzung oder der geselbsteten Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the code of the plant that it comes from</source>
        <translation>der Code der Pflanze, von der sie stammt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the code of the pollen parent</source>
        <translation>der Code des Pollenelters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the code of the seed parent</source>
        <translation>der Code des Samenelters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>the crop's {} to {}%</source>
        <translation>den {} bis {}% der Kulturart</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>the cross {}</source>
        <translation>die Kreuzung {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>the first</source>
        <translation>die erste</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>the fruits</source>
        <translation>die Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>the line's own record</source>
        <translation>die Angabe der Linie selbst</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>the odds of its candidates add up to more than 1</source>
        <translation>die Wahrscheinlichkeiten der Kandidaten ergeben zusammen mehr als 1</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>the packet {}</source>
        <translation>die Samentüte {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>the rest</source>
        <translation>der Rest</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>the row still varies more than they do</source>
        <translation>die Reihe streut noch stärker als sie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>the second</source>
        <translation>die zweite</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>the seed</source>
        <translation>den Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>the whole book, {} plants</source>
        <translation>das ganze Buch, {} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the year</source>
        <translation>das Jahr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/code_patterns.py"/>
        <source>the year in two digits</source>
        <translation>das Jahr, zweistellig</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>those that {}</source>
        <translation>jene, die {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>three genes of which one is enough, selfed</source>
        <translation>drei Gene, von denen eines genügt, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>three genes that all are needed, selfed</source>
        <translation>drei Gene, alle nötig, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>three genes, dominant, selfed</source>
        <translation>drei Gene, dominant, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>three quarters</source>
        <translation>drei Viertel</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <location filename="../../pedigreeview/planning/takes.py"/>
        <source>too few to tell</source>
        <translation>zu wenige, um es zu sagen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>too few to tell whether it is as even</source>
        <translation>zu wenige, um zu sagen, ob sie so einheitlich ist</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/mends.py"/>
        <source>trait {}</source>
        <translation>Merkmal {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/hybrid_or_self.py"/>
        <source>true hybrid</source>
        <translation>echte Hybride</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>two cuttings of one plant that is not inbred</source>
        <translation>zwei Stecklinge einer nicht ingezüchteten Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes of equal effect, both add, selfed</source>
        <translation>zwei Gene mit gleicher Wirkung, beide additiv, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes of which one is enough, selfed</source>
        <translation>zwei Gene, von denen eines genügt, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes that both are needed, selfed</source>
        <translation>zwei Gene, beide nötig, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes, dominant, selfed</source>
        <translation>zwei Gene, dominant, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes, heterozygotes of one told apart, selfed</source>
        <translation>zwei Gene, Heterozygote bei einem erkennbar, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes, one hides the other's dominant, selfed</source>
        <translation>zwei Gene, eines verdeckt das Dominante des anderen, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes, one hides the other's recessive, selfed</source>
        <translation>zwei Gene, eines verdeckt das Rezessive des anderen, geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes, one selfed and one backcrossed</source>
        <translation>zwei Gene, eines geselbstet und eines rückgekreuzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/ratios.py"/>
        <source>two genes, test cross</source>
        <translation>zwei Gene, Testkreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>two plants of one family after much selfing</source>
        <translation>zwei Pflanzen einer Familie nach vielen Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>two plants of one pure line</source>
        <translation>zwei Pflanzen einer reinen Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>unknown seed parent</source>
        <translation>unbekannter Samenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>unknown share</source>
        <translation>unbekannter Anteil</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>was good until {}; test its germination</source>
        <translation>war gut bis {}; Keimung prüfen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>where the two lines meet</source>
        <translation>wo sich die beiden Linien treffen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>withheld</source>
        <translation>zurückgehalten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>within each gamete</source>
        <translation>innerhalb jedes Gameten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>within the gamete</source>
        <translation>innerhalb des Gameten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>within the gamete of an unknown parent</source>
        <translation>innerhalb des Gameten eines unbekannten Elters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>within the gamete of the pollen parent</source>
        <translation>innerhalb des Gameten des Pollenelters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>within the gamete of the seed parent</source>
        <translation>innerhalb des Gameten des Samenelters</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>year not known</source>
        <translation>Jahr unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/crossing_list.py"/>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>your own records</source>
        <translation>eigene Aufzeichnungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/doubt.py"/>
        <source>{} (Was {} before.)</source>
        <translation>{} (Vorher: {}.)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/lock_holders.py"/>
        <source>{} (process {})</source>
        <translation>{} (Prozess {})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} (sd {}, {} plants)</source>
        <translation>{} (Standardabw. {}, {} Pflanzen)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>{} ({} observation{})</source>
        <translation>{} (Angaben: {}{})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} ({} of {})</source>
        <translation>{} ({} von {})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/targets.py"/>
        <source>{} ({} or more of {} wanted alleles)</source>
        <translation>{} ({} oder mehr von {} gewünschten Allelen)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} ({}): {}</source>
        <translation>{} ({}): {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <source>{} Also of {}, which was deleted.</source>
        <translation>{} Auch von {}, inzwischen gelöscht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>{} Choose one of its parents, or record it as a cross.</source>
        <translation>{} Einen ihrer Eltern wählen oder als Kreuzung aufzeichnen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>{} These cannot all be true: {}.</source>
        <translation>{} Das kann nicht alles stimmen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <source>{} Was a self of {}, which was deleted.</source>
        <translation>{} War eine Selbstung von {}, inzwischen gelöscht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/deleting.py"/>
        <source>{} Was {}, which was deleted.</source>
        <translation>{} War {}, inzwischen gelöscht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{} against {}{} among plants that are all alike (ratio likely between {} and {}): {}.</source>
        <translation>{} gegenüber {}{} bei Pflanzen, die alle gleich sind (Verhältnis wahrscheinlich zwischen {} und {}): {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/two_steps.py"/>
        <source>{} and {}</source>
        <translation>{} und {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_report.py"/>
        <source>{} and {} are 4x; only one gene at a time is followed there.</source>
        <translation>{} und {} sind 4x; dort wird nur ein Gen auf einmal verfolgt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>{} and {} flowers</source>
        <translation>{} und {} Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>{} and {} lie on the same chromosome, but how far apart is not on record; they are taken as unlinked.</source>
        <translation>{} und {} liegen auf demselben Chromosom, aber ihr Abstand ist nicht aufgezeichnet; sie gelten als ungekoppelt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} and {} more</source>
        <translation>{} und {} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{} and {} share no ancestor in this book.</source>
        <translation>{} und {} haben in diesem Buch keinen gemeinsamen Ahn.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} and {} were crossed; which of the two bore the seed is not known.</source>
        <translation>{} und {} wurden gekreuzt; welche der beiden den Samen trug, ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>{} and {} {} can only show a difference larger than about {}{}.</source>
        <translation>{} und {} {} können nur einen Unterschied über etwa {}{} zeigen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <source>{} and {}; which bore the seed is not known</source>
        <translation>{} und {}; welche den Samen trug, ist unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <source>{} as {}</source>
        <translation>{} als {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/hanging.py"/>
        <source>{} as {} parent</source>
        <translation>{} als {}elter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} bore the seed (seed parent), {} gave the pollen (pollen parent).</source>
        <translation>{} trug den Samen (Samenelter), {} gab den Pollen (Pollenelter).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} bore the seed and was open-pollinated: nobody chose the pollen.</source>
        <translation>{} trug den Samen und ist frei abgeblüht: Niemand wählte den Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} bore the seed; the pollen parent is not known.</source>
        <translation>{} trug den Samen; der Pollenelter ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} bore the seed; who gave the pollen is not sure: {}.</source>
        <translation>{} trug den Samen; wer den Pollen gab, ist nicht sicher: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>{} brings</source>
        <translation>{} bringt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>{} by {} pixels at 96 dots an inch.</source>
        <translation>{} mal {} Pixel bei 96 Punkten je Zoll.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>{} came from no cross, so it has no pollen parent to find.</source>
        <translation>{} stammt aus keiner Kreuzung; also ist kein Pollenelter zu finden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} came up</source>
        <translation>{} aufgelaufen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>{} can only show a difference larger than {} points.</source>
        <translation>{}: nur ein Unterschied über {} Punkten ist zu erkennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>{} can show no difference at all with 80% power.</source>
        <translation>{}: bei 80% Teststärke ist gar kein Unterschied zu erkennen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/ancestry.py"/>
        <source>{} cannot be a parent here: it {} one of the progeny.</source>
        <translation>{} kann hier kein Elter sein: Es {} einer der Nachkommen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>{} cannot come from {}: perhaps {}.</source>
        <translation>{} kann nicht aus {} stammen: vielleicht {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>{} cannot take its own place.</source>
        <translation>{} kann nicht an die eigene Stelle treten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>{} codes were given for {} plants.</source>
        <translation>{} Codes wurden für {} Pflanzen angegeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>{} comes from a parent of odd ploidy ({}x), for which no rule of inheritance holds; its coefficients are withheld.</source>
        <translation>{} stammt von einem Elter mit ungerader Ploidie ({}x), für die keine Vererbungsregel gilt; die Koeffizienten sind zurückgehalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>{} copies cannot be printed.</source>
        <translation>{} Kopien lassen sich nicht drucken.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} cross</source>
        <translation>{} Kreuzung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} crosses</source>
        <translation>{} Kreuzungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/choosing.py"/>
        <source>{} crosses cannot be chosen out of {}.</source>
        <translation>{} Kreuzungen lassen sich nicht aus {} auswählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>{} crosses of {} were harvested {} to {} days after pollination.</source>
        <translation>{} Kreuzungen von {} wurden {} bis {} Tage nach der Bestäubung geerntet.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} cutting or division</source>
        <translation>{} Steckling oder Teilung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} cuttings or divisions</source>
        <translation>{} Stecklinge oder Teilungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>{} days old</source>
        <translation>{} Tage alt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{} descendants</source>
        <translation>{} Nachkommen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/parent_arrays.py"/>
        <source>{} differs in length from the parents</source>
        <translation>{} hat eine andere Länge als die Eltern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>{} does not say how the bud was.</source>
        <translation>{} sagt nicht, wie die Knospe war.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>{} done, {} set</source>
        <translation>{} gemacht, {} angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} doubled</source>
        <translation>{} verdoppelt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} doubled haploid</source>
        <translation>{} Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} doubled haploids</source>
        <translation>{} Doppelhaploide</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} doubling of the chromosomes</source>
        <translation>{} Verdopplung der Chromosomen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} doublings of the chromosomes</source>
        <translation>{} Verdopplungen der Chromosomen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} dropped</source>
        <translation>{} abgefallen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} earlier step is in the book and is not told here.</source>
        <translation>{} früherer Schritt steht im Buch und wird hier nicht erzählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} earlier steps are in the book and are not told here.</source>
        <translation>{} frühere Schritte stehen im Buch und werden hier nicht erzählt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>{} first flowers {} days after sowing.</source>
        <translation>{} blüht zuerst {} Tage nach der Aussaat.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} flower</source>
        <translation>{} Blüte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} flowers</source>
        <translation>{} Blüten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/fruit_set.py"/>
        <source>{} flowers each way</source>
        <translation>{} Blüten je Richtung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} fruit</source>
        <translation>{} Frucht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} fruit set</source>
        <translation>{} Frucht angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} fruits</source>
        <translation>{} Früchte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} fruits set</source>
        <translation>{} Früchte angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} gave the pollen; the seed parent is not known.</source>
        <translation>{} gab den Pollen; der Samenelter ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{} generation after the founders</source>
        <translation>{} Generation nach den Gründern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{} generations after the founders</source>
        <translation>{} Generationen nach den Gründern</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/chart.py"/>
        <source>{} generations up, {} down</source>
        <translation>{} Generationen aufwärts, {} abwärts</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>{} has a finding of {} already.</source>
        <translation>{} hat schon einen Befund vom {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>{} has a finding of {}, which would still hold over one of {}.</source>
        <translation>{} hat einen Befund vom {}, der weiterhin Vorrang hätte vor einem vom {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{} has a score of {}, before it was sown on {}.</source>
        <translation>{} hat eine Bonitur vom {}, vor der Aussaat am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>{} has no cross, so both of its parents are wanted.</source>
        <translation>{} hat keine Kreuzung, also sind beide Eltern anzugeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/findings.py"/>
        <source>{} has no finding of {}.</source>
        <translation>{} hat keinen Befund vom {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>{} has no year that can be.</source>
        <translation>{} hat kein mögliches Jahr.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <source>{} in each of {} generations, {} kept ({}), {} in all, {}% assurance.</source>
        <translation>{} in jeder von {} Generationen, {} behalten ({}), {} insgesamt, {}% Sicherheit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <source>{} in one generation, {}% assurance.</source>
        <translation>{} in einer Generation, {}% Sicherheit.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>{} in {}</source>
        <translation>{} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source>{} in {} {}{}: up to {}% may still be off-types (95% bound).</source>
        <translation>{} in {} {}{}: bis zu {}% können noch Abweicher sein (95%-Grenze).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} is a founder: nothing is recorded before it, so it has no history to tell.</source>
        <translation>{} ist ein Gründer: Davor ist nichts aufgezeichnet, also gibt es keine Geschichte zu erzählen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/pedigree.py"/>
        <source>{} is a line with fixation {}, but by descent two of its plants already have coancestry {}; its coefficients are withheld.</source>
        <translation>{} ist eine Linie mit Fixierung {}, aber durch Abstammung haben zwei ihrer Pflanzen schon die Verwandtschaft θ {}; die Koeffizienten sind zurückgehalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/naming.py"/>
        <source>{} is a variety already, or came from elsewhere.</source>
        <translation>{} ist schon eine Sorte oder kam von außerhalb.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>{} is a {}: a pool of many plants.</source>
        <translation>{} ist eine {}: ein Pool aus vielen Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <source>{} is its own ancestor: </source>
        <translation>{} ist eigener Ahn: </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>{} is neither yes nor no for '{}'.</source>
        <translation>{} ist weder ja noch nein für „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>{} is no longer in the book as it was shown.</source>
        <translation>{} steht nicht mehr so im Buch, wie es gezeigt wurde.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>{} is no number for '{}'.</source>
        <translation>{} ist keine Zahl für „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>{} is no order of rows.</source>
        <translation>{} ist keine Ordnung der Zeilen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/notes.py"/>
        <source>{} is no plain file name.</source>
        <translation>{} ist kein einfacher Dateiname.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>{} is no whole number.</source>
        <translation>{} ist keine ganze Zahl.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>{} is not a parent of {}, so this is a cross and no backcross.</source>
        <translation>{} ist kein Elter von {}; dies ist also eine Kreuzung und keine Rückkreuzung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>{} is not a value of '{}'.</source>
        <translation>{} ist kein Wert von „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>{} is not among the {} of this book.</source>
        <translation>{} fehlt unter „{}“ in diesem Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typing_in.py"/>
        <source>{} is not in the book any more.</source>
        <translation>{} steht nicht mehr im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>{} is one plant, so its own seed is a selfing or open-pollinated.</source>
        <translation>{} ist eine einzelne Pflanze; ihr eigener Samen ist also eine Selbstung oder frei abgeblüht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <source>{} is recorded as its own parent</source>
        <translation>{} ist als eigener Elter aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/rows.py"/>
        <source>{} is recorded as {}x but its parents make it {}x, so its coefficients and those of its progeny are withheld.</source>
        <translation>{} ist als {}x aufgezeichnet, nach den Eltern aber {}x; die Koeffizienten, auch die der Nachkommen, sind daher zurückgehalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>{} is still named by {}.</source>
        <translation>{} wird noch genannt von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>{} is {} and {} is {}, which are different crops.</source>
        <translation>{} ist {} und {} ist {}, also verschiedene Kulturarten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>{} is {} as a {}{}.</source>
        <translation>{} ist {} als {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>{} is {} {}, and {} is a {}.</source>
        <translation>{} ist {} {}, und {} ist eine {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>{} is {} {}, not seed of a cross.</source>
        <translation>{} ist {} {}, kein Samen aus einer Kreuzung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>{} is {}.</source>
        <translation>{} ist {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/compatibility.py"/>
        <source>{} is {}x and {} is {}x: expect few seeds or none.</source>
        <translation>{} ist {}x und {} ist {}x: wenig oder keine Samen zu erwarten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>{} is {}x; several genes together are followed in 2x.</source>
        <translation>{} ist {}x; mehrere Gene zusammen werden bei 2x verfolgt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>{} known</source>
        <translation>{} bekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>{} labels</source>
        <translation>{} Etiketten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>{} left</source>
        <translation>noch {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{} left out; the nearest is {}.</source>
        <translation>{} ausgelassen; am nächsten liegt {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>{} lies outside the scale of '{}'.</source>
        <translation>{} liegt außerhalb der Skala von „{}“.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>{} line</source>
        <translation>{}-Linie</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} mating within a pool</source>
        <translation>{} Paarung innerhalb eines Pools</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} matings within a pool</source>
        <translation>{} Paarungen innerhalb eines Pools</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <source>{} more</source>
        <translation>{} weitere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{} more are in the book.</source>
        <translation>{} weitere stehen im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{} more is in the book.</source>
        <translation>{} weitere steht im Buch.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/papers.py"/>
        <source>{} more labels have no room for all of it; larger ones would.</source>
        <translation>{} weitere Etiketten haben nicht für alles Platz; größere hätten ihn.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{} more plants are</source>
        <translation>{} weitere Pflanzen sind</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <source>{} more plants of {}, folded; opens with a click</source>
        <translation>{} weitere Pflanzen aus {}, eingeklappt; ein Klick klappt sie aus</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{} more {} bring F to {}.</source>
        <translation>Noch {} {}: F steigt auf {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/direction.py"/>
        <source>{} of the</source>
        <translation>{} der</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/inference.py"/>
        <source>{} of the phenotypes misread</source>
        <translation>{} der Phänotypen falsch erkannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation_report.py"/>
        <source>{} of the plants are not scored for it.</source>
        <translation>{} der Pflanzen sind dafür nicht bonitiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>{} of {}</source>
        <translation>{} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/wishes.py"/>
        <source>{} of {} does not breed true or is none of {}.</source>
        <translation>{} von {} ist nicht reinerbig oder keines von {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <source>{} of {} flowers took</source>
        <translation>{} von {} Blüten haben angesetzt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>{} of {} of your own</source>
        <translation>{} von {} eigenen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/pages.py"/>
        <source>{} of {}, smallest text {} pt.</source>
        <translation>{} {}, kleinste Schrift {} pt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>{} of {}, {}.</source>
        <translation>{} {}, {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>{} of {}{}.</source>
        <translation>{} von {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/off_types.py"/>
        <source>{} off-type{}</source>
        <translation>{} Abweicher{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <source>{} on {} ({}).</source>
        <translation>{}, {} ({}).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} open pollination</source>
        <translation>{} Mal frei abgeblüht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} open pollinations</source>
        <translation>{} Mal frei abgeblüht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/crops.py"/>
        <source>{} or more</source>
        <translation>{} oder mehr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/legend.py"/>
        <source>{} other founders</source>
        <translation>{} andere Gründer</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>{} others</source>
        <translation>{} andere</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_lists.py"/>
        <source>{} pages</source>
        <translation>{} Seiten</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_pages.py"/>
        <source>{} pages of {}.</source>
        <translation>{} Seiten {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/overview_painter.py"/>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>{} plant</source>
        <translation>{} Pflanze</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} plant further back is left out.</source>
        <translation>{} Pflanze weiter zurück ist ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} plant is on record</source>
        <translation>{} Pflanze ist aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <source>{} plants</source>
        <translation>{} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} plants are on record</source>
        <translation>{} Pflanzen sind aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/plants.py"/>
        <source>{} plants are to be raised, but {} came up of the sowing {}.</source>
        <translation>{} Pflanzen sollen herangezogen sein, aber nur {} sind aufgelaufen aus der Aussaat {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>{} plants are too few to tell whether {} holds.</source>
        <translation>{} Pflanzen sind zu wenige, um zu sagen, ob {} gilt.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/segregation.py"/>
        <source>{} plants are too few to tell {} from {}; about {} would.</source>
        <translation>{} Pflanzen sind zu wenige, um {} von {} zu unterscheiden; etwa {} würden reichen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} plants further back are left out.</source>
        <translation>{} Pflanzen weiter zurück sind ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <source>{} plants, {}, {} to {}, each selfed, with {} sibs, folded</source>
        <translation>{} Pflanzen, {}, {} bis {}, jede geselbstet, mit {} Geschwistern, eingeklappt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{} plant{} folded away by the filter.</source>
        <translation>Vom Filter eingeklappte Pflanzen: {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <source>{} plant{} in the book</source>
        <translation>Pflanzen im Buch: {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>{} raised from {}{}.</source>
        <translation>{} herangezogen aus {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/drafts.py"/>
        <source>{} row {}</source>
        <translation>{} Zeile {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} seed</source>
        <translation>{} Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/crossed_before.py"/>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} seeds</source>
        <translation>{} Samen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>{} seeds in {} fruits ({} a fruit) on {}</source>
        <translation>{} Samen in {} Früchten ({} je Frucht) an {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <location filename="../../pedigreeview/reports/matings.py"/>
        <source>{} selfed</source>
        <translation>{} geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} selfing</source>
        <translation>{} Selbstung</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} selfing not recorded</source>
        <translation>{} Selbstung nicht aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tags.py"/>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} selfings</source>
        <translation>{} Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} selfings not recorded</source>
        <translation>{} Selbstungen nicht aufgezeichnet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/labels.py"/>
        <location filename="../../pedigreeview/reports/pages.py"/>
        <source>{} sheets</source>
        <translation>{} Blätter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/sheets.py"/>
        <source>{} sown</source>
        <translation>{} gesät</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} time from seed of a pool</source>
        <translation>{} Mal aus Samen eines Pools</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_history.py"/>
        <source>{} times from seed of a pool</source>
        <translation>{} Mal aus Samen eines Pools</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/crops.py"/>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} to {}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/pollen.py"/>
        <source>{} to {} days old</source>
        <translation>{} bis {} Tage alt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>{} traits were tested; each p is also given after Holm's correction where that changes it.</source>
        <translation>{} Merkmale wurden geprüft; jedes p steht auch nach Holms Korrektur da, wo sie es ändert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>{} unrecorded selfings</source>
        <translation>{} nicht aufgezeichnete Selbstungen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/blup.py"/>
        <source>{} values are left out: their plants depend on records that cannot be right.</source>
        <translation>{} Werte sind ausgelassen: Ihre Pflanzen hängen von Aufzeichnungen ab, die nicht stimmen können.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>{} wanted, {}</source>
        <translation>{} gewünscht, {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/edit_faults.py"/>
        <source>{} was changed meanwhile: {}.</source>
        <translation>{} wurde inzwischen geändert: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/correcting.py"/>
        <source>{} was found to be a self, and the cross {} has no seed parent.</source>
        <translation>{} erwies sich als Selbstung, und die Kreuzung {} hat keinen Samenelter.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>{} was not understood as a date.</source>
        <translation>{} wurde nicht als Datum verstanden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/quick.py"/>
        <source>{} was not understood.</source>
        <translation>{} wurde nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{} was on {}, before its flowers were emasculated on {}.</source>
        <translation>{} war am {}, vor dem Kastrieren der Blüten am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{} was on {}, before its pollen lot {} was collected on {}.</source>
        <translation>{} war am {}, bevor die Pollenprobe {} gesammelt wurde, am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>{} was read as day {} of month {}, and there are 12 months.</source>
        <translation>{} wurde als Tag {} im Monat {} gelesen, aber es gibt nur 12 Monate.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>{} was read as month {} of {}, and there are 12 months.</source>
        <translation>{} wurde als Monat {} in {} gelesen, aber es gibt nur 12 Monate.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>{} was read as {} days, which no calendar reaches.</source>
        <translation>{} wurde als {} Tage gelesen; so weit reicht kein Kalender.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/typed_dates.py"/>
        <source>{} was read as {} {} {}, which is no day.</source>
        <translation>{} wurde als {} {} {} gelesen; diesen Tag gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>{} was seen in flower.</source>
        <translation>{} wurde in Blüte gesehen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} was selfed: it bore the seed and gave the pollen.</source>
        <translation>{} wurde geselbstet: trug den Samen und gab den Pollen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{} was sown on {}, before its cross {} was made on {}.</source>
        <translation>{} wurde am {} gesät, vor der Kreuzung {}, gemacht am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{} was sown on {}, before its {} {} was sown on {}.</source>
        <translation>{} wurde am {} gesät, {} {} aber erst am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/contradictions.py"/>
        <source>{} with foreign pollen</source>
        <translation>{} mit Fremdpollen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_words.py"/>
        <source>{} with its chromosomes doubled.</source>
        <translation>{} mit verdoppelten Chromosomen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/crosses.py"/>
        <source>{} with itself is a selfing, which has one direction.</source>
        <translation>{} mit sich selbst ist eine Selbstung; sie hat nur eine Richtung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/pairs.py"/>
        <source>{} with itself is a selfing.</source>
        <translation>{} mit sich selbst ist eine Selbstung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/tinting.py"/>
        <source>{} without a value stay{} plain.</source>
        <translation>{} ohne Wert: ungetönt{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>{} years</source>
        <translation>{} Jahre</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{} {}</source>
        <translation>{} {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/scores.py"/>
        <source>{} {} cannot be taken; the first: {}</source>
        <translation>{} {} nicht annehmbar; zuerst: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/families.py"/>
        <source>{} {} fewer than {} measured plants.</source>
        <translation>{} {} weniger als {} gemessene Pflanzen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/checks.py"/>
        <source>{} {} no parents and no progeny.</source>
        <translation>{} {} weder Eltern noch Nachkommen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/traits.py"/>
        <source>{} {} of '{}' would no longer fit, such as {}.</source>
        <translation>Dann nicht mehr passend: {} {} von „{}“, etwa {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>{} {} of {}</source>
        <translation>{} {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>{} {} or less</source>
        <translation>{} {} oder weniger</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>{} {} or more</source>
        <translation>{} {} oder mehr</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/gene_tint.py"/>
        <source>{} {} plain: no chance can be given.</source>
        <translation>{} {} ungetönt: Es lässt sich keine Wahrscheinlichkeit angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/season.py"/>
        <source>{} {} ripen {} days after {}.</source>
        <translation>{}: {} reifen {} Tage nach: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/filtering.py"/>
        <source>{} {} to {}</source>
        <translation>{} {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/base.py"/>
        <source>{} {} {} as {}</source>
        <translation>{} {} {} als {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/flowers_needed.py"/>
        <source>{} {}%: {}, drawn towards {}.</source>
        <translation>{} {}%: {}, hingezogen zu {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{} {}, before its parent {} was sown on {}.</source>
        <translation>{} {}, vor der Aussaat des Elters {} am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/faults.py"/>
        <source>{} {}; nothing was taken in.</source>
        <translation>{} {}; nichts wurde eingelesen.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <source>{} {}sibs, {}, {} to {}, folded</source>
        <translation>{} {}Geschwister, {}, {} bis {}, eingeklappt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/wording.py"/>
        <source>{} × one of {}</source>
        <translation>{} × einer von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/reciprocal_report.py"/>
        <source>{} × {} against {} × {}.</source>
        <translation>{} × {} gegen {} × {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>{} × {} mm</source>
        <translation>{} × {} mm</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/mirrored.py"/>
        <source>{} × {}, not made yet</source>
        <translation>{} × {}, noch nicht gemacht</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/date_order.py"/>
        <source>{}, an annual sown on {}, is a parent of the cross {} made on {}.</source>
        <translation>{}, einjährig und gesät am {}, ist ein Elter der Kreuzung {}, gemacht am {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>{}, and each that does breeds true for it.</source>
        <translation>{}, und jede, die es zeigt, ist dafür reinerbig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>{}, as found</source>
        <translation>{}, wie befunden</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>{}, found by {}</source>
        <translation>{}, laut Befund von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>{}, found selfed</source>
        <translation>{}, laut Befund geselbstet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{}, from {}</source>
        <translation>{}, aus {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schedules.py"/>
        <source>{}, give or take {}% from plant to plant (one sd).</source>
        <translation>{}, mit ± {}% von Pflanze zu Pflanze (eine Standardabw.).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/complement.py"/>
        <source>{}, mid-parent {}</source>
        <translation>{}, Elternmittel {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/paper_tables.py"/>
        <source>{}, part {} of {}</source>
        <translation>{}, Teil {} von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>{}, pollen of {}</source>
        <translation>{}, Pollen von {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_makers.py"/>
        <source>{}, pollen parent not known</source>
        <translation>{}, Pollenelter unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>{}, pollen unknown</source>
        <translation>{}, Pollen unbekannt</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/statistics.py"/>
        <source>{}, so the spread around the expected shares cannot be given.</source>
        <translation>{}; die Streuung um die erwarteten Anteile lässt sich daher nicht angeben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/ghost.py"/>
        <source>{}, tried out</source>
        <translation>{}, ausprobiert</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/ghost.py"/>
        <source>{}, tried out, not in the book</source>
        <translation>{}, ausprobiert, nicht im Buch</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/folding.py"/>
        <source>{}, {} selfings folded, {} to {}</source>
        <translation>{}, {} Selbstungen eingeklappt, {} bis {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/label_sheets.py"/>
        <source>{}, {} × {} labels of {}{}</source>
        <translation>{}, {} × {} Etiketten von {}{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <source>{}, {}, from {}</source>
        <translation>{}, {}, aus {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>{}, {}: {}</source>
        <translation>{}, {}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{}.</source>
        <translation>{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <source>{}. The seed parent bears the fruit and the tag; in the order of its place.</source>
        <translation>{}. Der Samenelter trägt Frucht und Etikett; geordnet nach seinem Platz.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>{}. {}</source>
        <translation>{}. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>{}: mean {} (n {}) and {} (n {}){}; </source>
        <translation>{}: Mittel {} (n {}) und {} (n {}){}; </translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}: no own off-type seen, too few to tell.</source>
        <translation>{}: kein eigener Abweicher gesehen, zu wenige für ein Urteil.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/hybrid_or_self.py"/>
        <source>{}: not shown; nothing seen of it tells a hybrid from a selfing.</source>
        <translation>{}: nicht gezeigt; nichts Gesehenes unterscheidet eine Hybride von einer Selbstung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}: one sd is {}{} over {} plants</source>
        <translation>{}: eine Standardabw. ist {}{} über {} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>{}: pollen parent {}</source>
        <translation>{}: Pollenelter {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/pages.py"/>
        <source>{}: sheet {}</source>
        <translation>{}: Blatt {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/births.py"/>
        <source>{}: so found, whatever cross {} was meant to be</source>
        <translation>{}: so befunden, was auch immer die Kreuzung {} sein sollte</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{}: their lines meet at {}.</source>
        <translation>{}: Ihre Linien treffen sich bei {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>{}: {}</source>
        <translation>{}: {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/differences.py"/>
        <source>{}: {} (of {} and {} plants).</source>
        <translation>{}: {} (von {} und {} Pflanzen).</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/hybrid_or_self.py"/>
        <source>{}: {} ({}); chance of a selfing {}.</source>
        <translation>{}: {} ({}); Wahrscheinlichkeit einer Selbstung {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/report_parts.py"/>
        <source>{}: {} Source: {}.</source>
        <translation>{}: {} Quelle: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/drawing/blocks.py"/>
        <source>{}: {} descends from {}{}.</source>
        <translation>{}: {} stammt ab von {}{}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/cheapest_road.py"/>
        <source>{}: {} plants</source>
        <translation>{}: {} Pflanzen</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_plan.py"/>
        <source>{}: {} seeds in the last generation, {} plants over {} generations.{}</source>
        <translation>{}: {} Samen in der letzten Generation, {} Pflanzen über {} Generationen.{}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}: {} {} in a row of {}</source>
        <translation>{}: {} {} in einer Reihe mit {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schedules.py"/>
        <source>{}: {}% of the loci still segregate in a plant; {}% of the plants are fixed at all.</source>
        <translation>{}: {}% der Loci spalten in einer Pflanze noch auf; {}% der Pflanzen sind an allen fixiert.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schedules.py"/>
        <source>{}: {}% of the recurrent parent expected</source>
        <translation>{}: {}% vom rekurrenten Elter erwartet</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/line_steps.py"/>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{}: {}.</source>
        <translation>{}: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/hybrid_or_self.py"/>
        <source>{}: {}; {} comes from neither: foreign pollen, a mixed-up label or a misread plant.</source>
        <translation>{}: {}; {} kommt von keinem der beiden: Fremdpollen, ein vertauschtes Etikett oder eine falsch erkannte Pflanze.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}; no plants that are all alike were measured to set it against.</source>
        <translation>{}; zum Vergleich wurden keine Pflanzen gemessen, die alle gleich sind.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/schemes.py"/>
        <source>{}; of those that do, {}% breed true for it already.</source>
        <translation>{}; von denen, die es zeigen, sind {}% dafür schon reinerbig.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/growing_plan.py"/>
        <source>{}; sow {} seeds, as {}% come up and {}% of those live to be judged.</source>
        <translation>{}; {} Samen säen, da {}% auflaufen und {}% davon bis zur Beurteilung überleben.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}; that is foreign pollen or a volunteer, not segregation.</source>
        <translation>{}; das ist Fremdpollen oder Durchwuchs, keine Aufspaltung.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/relatives.py"/>
        <source>{}; the coefficients that depend on it are withheld.</source>
        <translation>{}; die davon abhängigen Koeffizienten sind zurückgehalten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/plant_report.py"/>
        <source>{}; {}</source>
        <translation>{}; {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <source>{}Seed parents in rows, pollen parents in columns; with the dates of bloom.</source>
        <translation>{}Samenelter in Zeilen, Pollenelter in Spalten; mit den Blühdaten.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/words.py"/>
        <source>{}{} of its gene pairs are expected to be alike by descent.</source>
        <translation>{}{} der Genpaare sind voraussichtlich durch Abstammung gleich.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/recording/moving.py"/>
        <source>{}{} to {}. {}</source>
        <translation>{}{} nach {}. {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/book/due.py"/>
        <source>{}{}, pollinated on {}</source>
        <translation>{}{}, bestäubt am {}</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}{}: all {} plants alike as measured, against one sd of {}{} among plants that are all alike: {}.</source>
        <translation>{}{}: alle {} Pflanzen gleich gemessen, gegen eine Standardabweichung von {}{} unter lauter gleichen Pflanzen: {}.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/planning/stability.py"/>
        <source>{}{}F expected {}: {}% of what once segregated is expected to do so still in each plant.</source>
        <translation>{}{}F voraussichtlich {}: {}% dessen, was einst aufspaltete, spaltet voraussichtlich noch in jeder Pflanze auf.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/bed_plan.py"/>
        <source>~ beside a row: positions are not recorded, its plants stand in the order of the book.</source>
        <translation>~ neben einer Reihe: Positionen sind nicht aufgezeichnet, ihre Pflanzen stehen in der Ordnung des Buchs.</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>× ♂ pollen parent</source>
        <translation>× ♂ Pollenelter</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/network/explanation.py"/>
        <source>θ(a, b) = Σ over common ancestors k of (weight of paths a…k…b first meeting in k) × θ(k, k)</source>
        <translation>θ(a, b) = Σ über gemeinsame Ahnen k von (Gewicht der Wege a…k…b, die sich zuerst in k treffen) × θ(k, k)</translation>
    </message>
    <message>
        <location filename="../../pedigreeview/reports/crossing_list.py"/>
        <location filename="../../pedigreeview/reports/crossing_plan.py"/>
        <location filename="../../pedigreeview/reports/garden_lists.py"/>
        <source>♀ seed parent</source>
        <translation>♀ Samenelter</translation>
    </message>
</context>
</TS>
