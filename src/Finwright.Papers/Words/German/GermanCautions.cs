using Finwright.Making.Quantities;

namespace Finwright.Papers.Words.German;

/// <summary>The cautions in German.</summary>
internal static class GermanCautions
{
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [Cautions.Skin] =
            "Nicht ausgehärtetes Harz und Härter können allergisch machen, und eine Allergie bleibt: Nitrilhandschuhe (benetzte wechseln; dünnes Latex hält nicht dicht), Augenschutz, lange Ärmel, bewegte Luft. Mit Wasser und Seife waschen, nie mit Lösemittel.",
        [Cautions.Runaway] =
            "Angerührtes Harz heizt sich selbst auf: nie mehr als einen Becher auf einmal anrühren und ihn sofort vergießen. Ein Becher, der heiß wird oder raucht, kommt ins Freie: auf ein Metallblech, dünn ausgestrichen, fern von Menschen; die Dämpfe nicht einatmen.",
        [Cautions.SealedCup] =
            "Nie einen Becher, eine Spritze oder ein Teil verschließen, solange das Harz darin härtet: es heizt sich auf, und der Druck kann es sprengen. Die Entlüftungen offen und über dem Wasser halten.",
        [Cautions.Waste] =
            "Reste: im Freien dünn ausstreichen, bis sie hart sind, dann in den Hausmüll; nichts Flüssiges kommt in den Abfluss oder in die Tonne.",
        [Cautions.Dust] =
            "Staub von Harz und Kohle: Maske P2 oder P3, nass schleifen, absaugen; erst nach der vollen Aushärtung. Kohlestaub leitet Strom: von elektrischen Geräten fernhalten.",
        [Cautions.Edges] =
            "Von der Hand weg schneiden. Hinterkante und Kante des Streifens etwa einen Millimeter breit und kantig lassen, oder stumpf: eine scharfe Finne schneidet Schwimmer.",
        [Cautions.Nozzle] =
            "Bei einer Pause ist die Düse heiß, und die Maschine kann sich bewegen: eine Pinzette benutzen, die Finger aus ihrem Weg halten.",
        [Cautions.Solvents] =
            "Den Streifen mit Klebstoff verkleben (zähes Epoxidharz auf aufgerauten, abgewischten Flächen). Vom Fügen mit einem starken Lösemittel ist abzuraten: die, die PETG lösen, sind giftig, und manche sind für Privatleute verboten; das Recht am Ort und das Datenblatt entscheiden.",
        [Cautions.Bath] =
            "Wasser und Netzstrom vertragen sich nicht: nichts Elektrisches am Wasserbad. Wasser von den Anschlüssen fernhalten; nasses Harz härtet nicht gut.",
        [Cautions.Proof] =
            "Erst an Land prüfen, dann dicht am Strand; mit einer ungeprüften Finne nicht weiter hinausfahren, als man zurückschwimmen kann.",
    };
}
