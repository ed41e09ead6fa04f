namespace Finwright.Papers.Words.German;

/// <summary>What the checks of print, pour and cure say.</summary>
internal static class MakingSayings
{
    private const string HeatsItself = "Eine größere Menge angerührtes Harz heizt sich selbst auf; die Dämpfe sind schädlich, und am Becher kann man sich verbrennen.";

    private const string RodsCarry = "Kohlestäbe längs der Spannweite und mehr Wände tragen die Last: Die Urteile zur Festigkeit rechnen damit.";

    public static IReadOnlyList<Saying> All { get; } =
    [
        new(
            "stops", "Muttern liegen unter der nächsten Schicht", "Eine Mutter, die vorsteht, reißt den Druck vom Bett; eine vergessene lässt sich später nicht mehr einsetzen.",
            ("no-stop", "Das Teil auf dem Bett drehen, oder die Tasche zu einer Seite hin öffnen."),
            ("clearance", "Der Tasche mehr Zugabe geben (print.pocket_allowance_mm) oder eine Vierkantmutter nehmen.")),
        new(
            "overhang", "Überhang ohne Stützen", "Hängende Linien machen die Haut rau und lassen Löcher, durch die Harz ausläuft.",
            ("support", "Dort vom Programm des Druckers Stützen setzen lassen; diese Seite danach spachteln und schleifen."),
            ("standing", "Stehend drucken: so hängt weniger über."),
            ("lying", "Liegend drucken: so hängt weniger über.")),
        new(
            "layers-to-load", "Biegung zieht die Schichten nicht auseinander", "Wo sich Schichten trennen, bricht eine Finne ohne Warnung.",
            ("standing", RodsCarry + " Stehend gedruckt laufen die Schichten längs der Last, aber es hängt mehr über, und eine Seite wird rau."),
            ("lying", RodsCarry + " Liegend gedruckt laufen die Schichten längs der Last, aber es hängt mehr über, und eine Seite wird rau."),
            ("", RodsCarry)),
        new(
            "trapped-air", "Luft, die in den Poren bleibt", "Wo Luft bleibt, ist die Finne hohl: schwach, und durch jeden Kratzer zieht sie Wasser.",
            ("vents", "Weitere Entlüftungen bohren, wo die Rechnung sie vorschlägt, oder das Teil beim Gießen anders halten."),
            ("rocking", "Das Teil beim Füllen hin und her neigen und beklopfen, und nachfüllen.")),
        new(
            "ports-open-both", "Jeder Anschluss öffnet beide Labyrinthe des Gyroids",
            "Ein Gyroid teilt das Innere in zwei Labyrinthe, die sich nie treffen: eines, das nicht geöffnet wird, bleibt voller Luft.",
            ("depth", "Bis zu der Tiefe in den Kern bohren, ab der die Rechnung beide sicher offen findet."),
            ("thicker", "Den Anschluss dorthin setzen, wo das Teil dicker ist, und tiefer bohren; oder das Loch weiter machen."),
            ("wider", "Das Loch weiter machen, oder dorthin setzen, wo das Teil dicker ist.")),
        new(
            "fill-time", "Füllen, bevor das Harz dick wird", "Harz, das auf halbem Weg dick wird, lässt den Rest des Teils leer.",
            ("not-known", "Die Viskosität des Harzes angeben, oder langsam gießen und zusehen."),
            ("head", "Den Schlauch des Zulaufs höher halten (pour.head_mm) oder mit der Spritze drücken."),
            ("thickens", "In Stufen gießen, ein langsameres oder dünnflüssigeres Harz nehmen, oder eine offenere Füllung drucken."),
            ("cup", "Kleinere Becher anrühren (pour.cup_grams) oder ein langsameres Harz nehmen.")),
        new(
            "pore-opinion", "Raum für Harz: Unterschied zwischen der Rechnung mit Würfeln und der mit Schichten",
            "Zwei Verfahren, die nichts voneinander wissen und übereinstimmen, sind mehr wert als eines.",
            "Einen weiteren Becher bereithalten und das Teil auf Splitter und Wände ansehen, die sich treffen."),
        new(
            "thin-core", "Kern, der zu dünn ist, um sich durch das Gyroid zu füllen", "In dünnen Kanten kann Luft bleiben, die kein Anschluss erreicht.",
            "Die Kanten massiv drucken (eine oder zwei Wände mehr), mit feineren Linien oder mehr Füllung ein kleineres Muster drucken, oder es hinnehmen und die Kanten gut versiegeln."),
        new(
            "softening", "Wände bleiben unter der Erweichung",
            "Ein Druck, der weich wird, biegt sich unter dem eigenen Gewicht und dem des Harzes; das Blatt härtet krumm, oder der Guss läuft aus.",
            ("not-followed", "Harz, Dicke oder Kühlung ein wenig ändern und noch einmal rechnen."),
            ("air", "In ein Wasserbad stellen (pour.cooling), in Stufen gießen oder ein langsameres Harz nehmen."),
            ("bath", "Das Bad kühlen, in Stufen mit Zeit dazwischen gießen oder ein langsameres Harz nehmen.")),
        new(
            "near-critical", "Etwas weniger Kühlung ändert wenig",
            "Nahe der Grenze ist keine Vorhersage viel wert: ein warmer Tag entscheidet zwischen einem warmen und einem geschmolzenen Teil.",
            "Von der Grenze wegkommen: kälteres Wasser, dünnere Güsse in Stufen, ein langsameres Harz."),
        new(
            "water-time", "Zeit im Wasserbad", "Zu früh herausgenommen, entsteht der Rest der Wärme an der Luft, wo er nicht wegkann.",
            ("not-enough", "Kälteres Wasser, dünnere Güsse in Stufen oder ein langsameres Harz."),
            ("longer", "Mindestens so lange im Bad lassen, wie die Grenze sagt (pour.bath_hours).")),
        new(
            "handling", "Hart genug zum Anfassen", "Harz, das bewegt wird, bevor es fest ist, verschiebt sich und reißt; kaltes Harz wird vielleicht nie ganz hart.",
            "Aus dem kalten Wasser nehmen, sobald die Wärme vorbei ist, und einige Tage bei 20 bis 25 °C halten."),
        new(
            "cup", "Mischbecher, der stehen bleibt", HeatsItself,
            "Weniger auf einmal anrühren (pour.cup_grams), sofort vergießen, Reste im Freien dünn auf einem Metallblech ausstreichen."),
        new("reservoir", "Harz in Schlauch und Trichter", HeatsItself, "Weniger Harz auf den Anschlüssen stehen lassen (pour.reservoir_ml), in einem dünnen Schlauch."),
    ];
}
