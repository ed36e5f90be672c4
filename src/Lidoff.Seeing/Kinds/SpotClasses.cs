namespace Lidoff.Seeing.Kinds;

/// <summary>
/// The sorts of things a spot is offered as; any other word may be typed. Letters of electrical parts follow the trade's habit
/// (reference designations as in IEEE 315, from memory); the others are ours.
/// </summary>
public static class SpotClasses
{
    /// <summary>All, in the order in which they are offered: what carries a mark first.</summary>
    public static IReadOnlyList<SpotClass> All { get; } =
    [
        new("chip", "U", "an integrated circuit, whatever its package"),
        new("module", "U", "a small board or a can that is itself a part"),
        new("passive", "Z", "a resistor, capacitor or coil that is not told apart yet"),
        new("resistor", "R", "a resistor or a jumper of 0 Ω"),
        new("capacitor", "C", "a capacitor"),
        new("inductor", "L", "a coil or a ferrite"),
        new("diode", "D", "a diode, a protection array"),
        new("transistor", "Q", "a transistor in a package of its own"),
        new("led", "D", "a light-emitting diode or a lamp"),
        new("crystal", "Y", "a crystal, resonator or oscillator"),
        new("fuse", "F", "a fuse, also one that resets itself"),
        new("connector", "J", "a connector, a spring contact, a charging contact"),
        new("test pad", "TP", "a pad for probes or programming"),
        new("cell", "BT", "a cell or a pack"),
        new("button", "SW", "a button or a switch"),
        new("antenna", "AE", "an antenna: chip, trace or wire"),
        new("microphone", "MK", "a microphone"),
        new("speaker", "LS", "a speaker or a buzzer"),
        new("motor", "M", "a vibration motor"),
        new("display", "DS", "a display"),
        new("sensor", "U", "a sensor that is no plain chip: optical, pressure, strain"),
        new("electrode", "E", "an electrode or a contact that touches skin"),
        new("coil", "L", "a charging or near-field coil"),
        new("magnet", "MG", "a magnet"),
        new("board", "A", "a rigid or flexible board"),
        new("flex", "W", "a flexible circuit that joins boards"),
        new("cable", "W", "a flat cable or a wire"),
        new("stiffener", "H", "a stiffener under a flexible circuit"),
        new("shield", "SH", "a shield can"),
        new("housing", "H", "a housing or a part of one"),
        new("overmould", "H", "a body moulded over the inside"),
        new("potting", "H", "a cast that fills the inside"),
        new("glue", "H", "a bead of glue or an adhesive film"),
        new("coating", "H", "a coating over the board"),
        new("seam", "H", "a seam, weld or joint of the housing"),
        new("seal", "H", "a gasket, membrane or vent"),
        new("strain relief", "H", "what keeps a pull off a joint"),
        new("screw", "H", "a screw, clip or pin"),
        new("window", "H", "a light guide, lens or window"),
        new("strap", "H", "a strap, band or textile"),
        new("track", "W", "a track, via or pour worth pointing at"),
        new("label", "H", "a label or a print"),
        new("other", "X", "anything else worth pointing at"),
    ];

    /// <summary>Their words, in the same order.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. All.Select(each => each.Word)];

    /// <summary>The sort under a word; null for a word that somebody made up.</summary>
    public static SpotClass? Find(string word) => All.FirstOrDefault(each => string.Equals(each.Word, word, StringComparison.Ordinal));
}
