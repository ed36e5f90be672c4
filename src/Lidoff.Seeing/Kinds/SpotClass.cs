namespace Lidoff.Seeing.Kinds;

/// <summary>A sort of thing a spot can be: the word for its class, the letters its designators begin with, and what belongs to it.</summary>
public sealed record SpotClass(string Word, string Letters, string Says)
{
    /// <summary>True where it joins several nets, so that a probe is on one of its pins and never on it as a whole. An antenna, a pad, a track or an electrode is one point, and among connectors a spring or charging contact is.</summary>
    public bool HasPins => Letters is "U" or "Z" or "R" or "C" or "L" or "D" or "Q" or "Y" or "F" or "BT" or "SW" or "MK" or "LS" or "M" or "DS";

    /// <summary>True where a mark may be printed on it. What closes, holds and joins a device carries none, nor does a pad; a person may still ask for it to be read.</summary>
    public bool BearsMark => HasPins || Word is "connector" or "shield" or "label" or "other";
}
