namespace Finwright.Papers.Words.German;

/// <summary>What the checks of the loaded fin say.</summary>
internal static class StrengthSayings
{
    private const string InGust = ", in einer Bö oder bei der Landung";

    private const string Breaks = "Eine Finne, die bricht, bricht unter der größten Last, weit vom Ufer.";

    public static IReadOnlyList<Saying> All { get; } =
    [
        new(
            "walls-across-layers", "Reserve der Wände zwischen ihren Schichten" + InGust, Breaks,
            "Das Blatt liegend drucken, damit die Schichten längs der Spannweite laufen; oder die Wurzel dicker machen, Kohlestäbe einsetzen oder mehr Wände nehmen."),
        new("walls-along-layers", "Reserve der Wände längs ihrer Schichten" + InGust, Breaks, "Die Wurzel dicker machen, Kohlestäbe einsetzen oder die Spannweite kürzen."),
        new("root-corner", "Reserve der Ecke an der Wurzel" + InGust, Breaks, "Der Wurzel einen Flansch geben, mit einer Hohlkehle von mindestens der halben Wurzeldicke."),
        new("cut-bond", "Reserve der Klebung an den Trennstellen" + InGust, Breaks, "Die Trennstelle weiter von der Wurzel weg legen, Kohlestäbe durch sie führen oder das Blatt in einem Stück drucken."),
        new("core", "Reserve des Kerns" + InGust, Breaks, "Mehr Wände oder Kohlestäbe entlasten den Kern; darauf achten, dass beim Gießen keine Hohlräume bleiben."),
        new("rods", "Reserve der Kohlestäbe" + InGust, Breaks, "Dickere Stäbe nehmen, oder mehr davon, oder sie dort enden lassen, wo sich das Blatt weniger biegt."),
        new("rod-bond", "Reserve der Klebung der Kohlestäbe" + InGust, Breaks, "Die Stäbe in die Basis reichen oder tiefer im Blatt auslaufen lassen; vor dem Kleben anschleifen und entfetten."),
        new(
            "breaking", "Reserve gegen Bruch", Breaks,
            ("beyond-range", "Die Profile dicker machen, dicke Kohlestäbe einsetzen oder die Spannweite kürzen."),
            ("not-settled", "Die Profile dicker machen, dicke Kohlestäbe einsetzen, dem Blatt mehr Rake geben oder die Spannweite kürzen."),
            ("no-loads", "Zuerst beheben, weshalb die Lasten nicht gerechnet wurden; die Befunde zum Entwurf nennen es.")),
        new(
            "tiring", "Spannung bei Reisegeschwindigkeit im Verhältnis zur Festigkeit, Last um Last",
            "Ein Riss, der mit jeder Bö ein wenig wächst, zeigt sich spät; eine Finne, die eine Saison gehalten hat, hält vielleicht die nächste nicht.",
            "Die Wurzel dicker machen oder Stäbe einsetzen; nach jeder dritten oder vierten Ausfahrt an der Wurzel nach weißen Linien und feinen Rissen sehen, und die Belastungsprobe jede Saison wiederholen: eine weichere Finne ist eine gerissene."),
        new(
            "joint-opening", "Moment bei Reisegeschwindigkeit im Verhältnis zu dem, das die Fuge öffnet",
            "Eine Fuge, die sich öffnet, pumpt Wasser und Luft, brummt und arbeitet ihre Schrauben los, bis sie nachgeben.",
            "Die Wurzel breiter machen, mit dem empfohlenen Drehmoment anziehen, eine Spannstange einsetzen, die Flächen verkleben oder Blatt und Basis als ein Teil drucken."),
        new(
            "joint-hold/ties", "Reserve der Schrauben, Muttern und Stäbe durch die Fuge" + InGust,
            "Wenn die erste Schraube, die erste Mutter oder der erste Stab loslässt, ist das Blatt verloren.",
            ("ties", "Mehr oder dickere Schrauben oder Stäbe nehmen, die Muttern tiefer setzen, die Stäbe weiter in die Basis reichen lassen oder die Flächen verkleben.")),
        new(
            "joint-hold/bond", "Reserve der geklebten Fuge" + InGust,
            "Eine Klebung gibt auf einmal nach; dann halten nur noch Schrauben und Stäbe das Blatt.",
            ("bond", "Die Wurzel oder ihren Flansch breiter machen, Stäbe durch die Fuge führen oder Blatt und Basis als ein Teil drucken.")),
        new(
            "base", "Reserve der Basis im Finnenkasten" + InGust, "Eine Basis, die bricht, lässt ihre obere Hälfte und die Schrauben im Brett zurück.",
            "Die Basis liegend drucken, Kohlestäbe in sie hineinreichen lassen oder einen breiteren Finnenkasten nehmen."),
        new(
            "tightening", "Drehmoment, das die Fuge schließt, im Verhältnis zu dem, das alle Teile aushalten",
            "Zu fest angezogen spreizt sich die Basis im Finnenkasten oder die Mutter reißt aus; zu locker angezogen öffnet sich die Fuge.",
            "Die Mutter tiefer setzen, ihr seitlich mehr Kunststoff geben oder mehr Schrauben nehmen."),
        new(
            "deflection", "Durchbiegung bei Reisegeschwindigkeit, bezogen auf die Spannweite",
            "Eine gebogene Finne zieht das Brett mit einem Teil ihrer Kraft in Luv hoch und fährt mit kürzerer Spannweite; etwas Biegung fühlt sich weich an und ist gewollt.",
            "Die Wurzel dicker machen, Kohlestäbe einsetzen oder verlängern, oder die Spannweite kürzen."),
        new(
            "twist", "Verdrehung der Spitze bei Reisegeschwindigkeit",
            "Eine Spitze, die sich entlastet, verzeiht Böen und verschenkt Vortrieb; an einer, die sich auflädt, reißt die Strömung zuerst ab, und sie schwingt zuerst.",
            ("washes-out", "Weniger Rake, ein dickeres äußeres Blatt oder ein Stab näher an der Hinterkante macht sie steifer."),
            ("washes-in", "Mehr Rake geben oder die Stäbe weiter nach vorn setzen.")),
        new(
            "second-opinion", "Biegung bei Reisegeschwindigkeit: Unterschied zwischen der Rechnung als Platte und der als Balken",
            "Zwei Verfahren, die nichts voneinander wissen und übereinstimmen, sind mehr wert als eines.",
            ("no-beam", "Der Belastungsprobe mehr trauen als beiden Verfahren."),
            ("", "Die Belastungsprobe machen, bevor man sich auf die Zahlen verlässt; breite oder stark nach hinten geneigte Blätter sind Sache der Platte.")),
        new(
            "divergence", "Geschwindigkeit, bei der sich das Blatt ohne Ende verdrehen würde, im Verhältnis zur Höchstgeschwindigkeit",
            "Bei der Divergenz verdreht die Last das Blatt schneller, als es dagegenhält; es bricht sofort.",
            "Dem Blatt mehr Rake geben oder es gegen Verdrehung steifer machen: dickere Profile, mehr Wände."),
        new(
            "large-deflection", "Ob die Rechnung bis zur Last einer Bö oder Landung reicht",
            "Über einem Zehntel der Spannweite versteift und entlastet sich das Blatt auf eine Weise, die eine lineare Rechnung nicht kennt.",
            "Das Blatt steifer machen, oder die Zahlen für diese Last als obere Grenze nehmen."),
        new(
            "grounding", "Geschwindigkeit, mit der sie einen Stoß auf harten Grund aushält",
            "Keine Finne aus Kunststoff hält ein gleitendes Brett am Fels auf; nachgeben soll zuerst die Finne, nicht der Finnenkasten.",
            "Vom Grund fernbleiben: weniger Tiefgang hilft. Mit mehr Rake gleitet die Finne über ihn hinweg."),
        new(
            "hum", "Wirbel der Hinterkante gegen die ersten Eigenfrequenzen im Wasser", "Wirbel im Takt des Blatts lassen es brummen und ermüden es.",
            "Eine dünnere oder einseitig angeschrägte Hinterkante hebt die Frequenz der Wirbel; eine lockere Basis brummt auch: diese zuerst prüfen."),
    ];
}
