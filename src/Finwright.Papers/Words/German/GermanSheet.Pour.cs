using Finwright.Making.Pores;

namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Pour => "Füllen";

    public override string PourNotPlanned => "Das Füllen wurde nicht berechnet: Hier können keine Zahlen stehen.";

    public override string NothingPoured => "Kein Teil hat innerhalb seiner Wände Platz für Harz; es wird nichts gefüllt.";

    public override StepWords LayOut => new("Becher, Waage, Stäbe, Spritze, Tücher und ein zweites Paar Handschuhe bereitlegen; dieses Kapitel zu Ende lesen", "Einmal gemischt, wartet das Harz nicht.");

    public override string PortColumn => "Anschluss";

    public override string NameColumn => "Name";

    public override string RoleColumn => "wofür";

    public override string DiameterColumn => "Bohrer";

    public override string DepthColumn => "tief, ab der Haut";

    public override string PortsSuggested => "Das Teil hat keine eigenen Anschlüsse: Das Bild zeigt, wo zu bohren ist.";

    public override string WorkingTimeUnknown => "Wie lange ein voller Becher zu verarbeiten ist, ist nicht bekannt: Das Datenblatt sagt es.";

    public override string FillingUnknown => "Wie schnell sich die Poren füllen, ist nicht bekannt: langsam gießen und die Entlüftungen beobachten.";

    public override string CupColumn => "Becher";

    public override string ResinColumn => "Harz";

    public override string HardenerColumn => "Härter";

    public override string MixColumn => "zusammen";

    public override string MixedAtColumn => "gemischt um";

    public override string PouredAtColumn => "gefüllt um";

    public override StepWords Rock => new("Während es sich füllt: das Teil überall neigen, wiegen und klopfen", "Blasen hängen an den Linien der Füllung; ein Klopfen löst sie.");

    public override string NoAir => "So gehalten, findet alle Luft den Weg zu einer Entlüftung.";

    public override StepWords TopUp => new("Wenn in jeder Entlüftung Harz ohne Blasen steht, aufhören; jede Viertelstunde nachsehen und nachfüllen, bis nichts mehr sinkt", "Die Poren trinken weiter, und Harz schwindet beim Aushärten.");

    public override string StageColumn => "Füllung";

    public override string LevelColumn => "bis";

    public override string AfterColumn => "nach der ersten";

    public override StepWords PourStages => new("Die Höhen mit Klebeband am Teil anzeichnen; bei jeder aufhören und warten, bis das Teil warm geworden und wieder abgekühlt ist; weiterfüllen, solange die letzte Füllung noch klebt", "Jede Füllung muss ihre Wärme abgeben; auf klebriger Fläche haftet die nächste (gängige Praxis, ohne Quelle).");

    public override StepWords Leftovers => new("Reste aus Bechern und Spritze im Freien dünn auf dem Metallblech ausstreichen", "Eine dünne Schicht bleibt kühl, ein voller Becher nicht.");

    public override string PourSentence(string pores, string grams, string cups) => $"Die Poren nehmen etwa {pores} auf; zu mischen sind {grams} ({cups}), samt dem, was in Schläuchen, Bechern und Spritze bleibt.";

    public override StepWords WarmResin(string resin, string room) => new($"Harz und Härter auf {resin} bringen, den Raum auf {room}", "Alle Zeiten dieses Kapitels gelten für diese Temperaturen; wärmer geht es schneller.");

    public override StepWords FillBath(string temperature) => new($"Die Wanne mit Wasser von {temperature} füllen und jedes Teil darin probieren, trockene Anschlüsse oben, bevor etwas gemischt wird", "Ein Teil, das mit Harz darin aufschwimmt oder kippt, ist verloren.");

    public override StepWords HowToMix(string cup) => new($"Für jeden Becher: Harz abwiegen, Härter dazuwiegen, drei Minuten rühren, Wand und Boden abstreifen, in einen sauberen Becher umgießen, noch einmal rühren; nie mehr als {cup} in einem Becher", "Harz an der Becherwand bleibt ungemischt und härtet nie; ein größerer Becher heizt sich schneller auf.");

    public override string LimitedBy(BatchLimit limit) => limit switch
    {
        BatchLimit.StatedMass => "Ein Becher ist so groß wie der, für den das Datenblatt seine Verarbeitungszeit nennt.",
        BatchLimit.PotLife => "Ein Becher ist so groß, wie ihn eine Hand in der halben Verarbeitungszeit einfüllen kann.",
        _ => "Ein Becher ist so groß, wie der Entwurf es zulässt.",
    };

    public override StepWords Hold(string part, string attitude) => new($"{part} so halten und festmachen, wie das Bild zeigt: {attitude}", "Anders gehalten, bleibt Luft, wo keine Entlüftung ist.");

    public override string PourCaption(string part) => $"{part}, zum Füllen gehalten: die Anschlüsse mit ihren Nummern, der Zulauf ausgefüllt.";

    public override string Role(bool isFeed) => isFeed ? "Zulauf" : "Entlüftung";

    public override StepWords DrillPorts(string part) => new($"{part}, Anschlüsse bohren: so tief, wie die Tabelle sagt, ab der Haut: durch die Wand und weiter in den Kern; diese Tiefe mit Klebeband am Bohrer anzeichnen", "Die Füllung teilt das Innere in zwei Räume, die sich nie treffen; nur ein Loch, das tief genug ist, öffnet beide.");

    public override StepWords SetReservoir(string millilitres, string head) => new($"Schlauch und Trichter an Anschluss 1 festmachen; den Trichter {head} über dem höchsten Punkt des Teils halten; am Ende sollen {millilitres} in Trichter und Schläuchen stehen", "Die Höhe drückt das Harz durch die Poren, und was dort steht, füllt sie nach.");

    public override StepWords SetSyringe(string head) => new($"Den Schlauch an Anschluss 1 festmachen; sein oberes Ende {head} über dem höchsten Punkt des Teils halten oder leicht auf die Spritze drücken", "Die Höhe drückt das Harz durch die Poren.");

    public override StepWords PourCups(string part, string cups, string total, string pouring) => new($"{part} durch Anschluss 1 füllen, langsam: {cups}, zusammen {total}, etwa {pouring} je Becher; jeden abhaken", "Schnelles Harz schließt Luft hinter sich ein.");

    public override string WorkingTime(string time) => $"Ein voller Becher ist etwa {time} zu verarbeiten; in der ersten Hälfte dieser Zeit einfüllen. Was Fäden zieht oder warm wird, wird nicht mehr eingefüllt.";

    public override string Filling(string time) => $"Die Poren allein ließen das ganze Teil in {time} volllaufen.";

    public override string PoresRange(string pores, string total) => $"Platz für Harz: {pores}. Zu mischen, mit Verlusten: {total}. Der letzte Becher kann kleiner sein, oder es braucht noch einen.";

    public override string AirStays(string millilitres, string share) => $"So gehalten, bleiben {millilitres} Luft, {share} der Poren, wo das Bild es zeigt: diese Stelle beim Füllen zu einer Entlüftung hin neigen.";

    public override string AirBetter(string attitude, string millilitres) => $"Anders gehalten ({attitude}) bleiben {millilitres}.";

    public override string AirRocking(string first, string second, string millilitres) => $"Gewiegt zwischen zwei Lagen ({first}; {second}) bleiben {millilitres}.";

    public override string Staged(int pours) => $"Dieser Entwurf wird in {pours} Füllungen nacheinander gefüllt:";
}
