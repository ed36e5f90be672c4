using Lidoff.Opening.Kinds;

namespace Lidoff.Opening.Cautioning;

/// <summary>
/// The cautions that are printed beside steps where they bite. They are general, they defer to local rules and to the makers
/// of tools and materials, and they stop nobody. Figures: flash points and the 60 °C cell limit are common practice, no
/// source here; fluoride from burning cells is the published 20 to 200 mg a watt-hour (Larsson et al., Scientific Reports 7,
/// 2017, 10018).
/// </summary>
public static class Cautions
{
    private static readonly Caution DamagedCell = new(
        "cell-damaged", [],
        "Do not charge, heat, press or open a cell that is swollen, dented, wet or hot. Set it on something that cannot burn, away from people, and follow what your fire service and waste rules say.");

    private static readonly Caution DeadCell = new(
        "cell-reads-zero", [],
        "A cell that reads near 0 V may only have a protection board that switched off, or it may be deeply discharged. Do not charge it below the lowest voltage its maker states.");

    private static readonly Caution LiveCell = new(
        "cell-connected", [StepAct.Pry, StepAct.Solder, StepAct.Grind, StepAct.Solvent, StepAct.Strain],
        "Is the cell out, or at least disconnected? This step can short or puncture it.");

    /// <summary>Printed once on each page that has cautions.</summary>
    public const string House =
        "Cautions here are general notes for adults who work on equipment that is lawfully theirs. Makers' instructions and your local rules for electricity, fire, chemicals, waste, radiation and data come first; where these ask for a qualified person, ask one. When in doubt, stop.";

    /// <summary>Every caution in the order in which it is printed.</summary>
    public static IReadOnlyList<Caution> All { get; } =
    [
        new("own-it", [StepAct.Buy], "Work on units that are lawfully yours. A contract, an employer or export rules may limit what you may do with one or say about it."),
        new("others-data", [StepAct.Buy, StepAct.Memory], "A used device may carry its former owner's data. Look no further than the work needs, publish none of it, and erase or return it as your law asks."),
        new("bright-light", [StepAct.Look], "Do not look into ultraviolet lamps, LED rings or raking lamps, and take any optical sensor for a possible laser or infrared source."),
        new("x-ray", [StepAct.XRay], "X-rays only with equipment and people that are permitted for it where you are. The dose can change memories: take the picture before anything you need to read back."),
        new("blades", [StepAct.Cut], "Blades and ultrasonic cutters slip. Clamp the work, cut away from yourself, protect your eyes and the hand that holds. An ultrasonic blade also burns, is loud and makes plastic dust."),
        new("heat-and-cell", [StepAct.Heat, StepAct.Solder], "Heat for the glue also reaches the cell: keep it below its maker's limit, often 60 °C, never heat a swollen one, and stay beside the work."),
        new("cell-tools", [StepAct.Cell, StepAct.Pry], "At a lithium cell use tools that do not conduct, free one lead at a time and cover it at once. Work on a tray that cannot burn, with a way out. If a cell heats up or hisses, leave, and call for help."),
        new("cell-gas", [StepAct.Cell], "Gas and fire of a cell are poisonous: burning cells have given off 20 to 200 mg of hydrogen fluoride for each watt-hour. Do not breathe it and do not touch what leaked."),
        new("charging", [StepAct.Charge], "Do not charge a cell that is damaged, wet, hot, of unknown chemistry or below its maker's lowest voltage, and do not leave charging alone."),
        new("supply", [StepAct.Supply], "Use an isolated supply with a current limit. Do not open or probe a mains adapter that is plugged in or was a moment ago; mains is for people qualified for it."),
        new("solvents", [StepAct.Solvent], "Isopropanol can ignite from about 12 °C, acetone far below freezing. Air the room, keep sparks and heat away, read the safety sheet, wear gloves that fit the solvent, and put no flammable solvent into a heated or ultrasonic bath not made for it."),
        new("coatings", [StepAct.Coating, StepAct.Heat], "Warm or dissolving coatings and pottings can give off irritant or sensitising vapours: extract them. Acid work on packages belongs in a laboratory that is set up and allowed for it."),
        new("dust", [StepAct.Grind], "Board dust holds glass fibre, metals and flame retardants, at times beryllium. Grind wet, with extraction, and with the breathing protection your rules ask for."),
        new("small-parts", [StepAct.Pry, StepAct.Cell], "Small parts, magnets and coin cells are dangerous when swallowed: keep them from children and animals. A swallowed cell or magnet is an emergency."),
        new("static", [StepAct.Board, StepAct.Probe, StepAct.Solder], "Static kills parts, and evidence with them: wrist strap through a resistor to a proper ground, parts in dissipative trays."),
        new("charged-capacitors", [StepAct.Probe, StepAct.Board, StepAct.Supply], "Boost rails for flashes, lamps, piezos and haptics can hold tens to hundreds of volts after power is gone: discharge them through a resistor and measure that they are."),
        new("drive", [StepAct.Drive], "Drive only what you have identified, at its own logic level. Listen before you speak."),
        new("shiny", [StepAct.Thermal], "Shiny surfaces look cooler to a thermal camera than they are: do not touch by what the picture says."),
        new("protected-memory", [StepAct.Memory], "Reading protected memory can fall under rules on access protection, copyright, trade secrets or computer misuse, which differ from place to place: take advice before."),
        new("findings", [StepAct.Memory, StepAct.Publish], "Tell a maker of a security finding before others and allow time; publish no keys and nothing that identifies a person."),
        new("strain", [StepAct.Strain], "Bend, drop and pressure tests only with the cell out and a guard in place."),
        new("transmit", [StepAct.Transmit], "Transmit only within what needs no licence where you are, or in a shielded box. An opened radio may have lost its approval."),
        new("people", [StepAct.Person], "Tests on people need their consent and, in institutions, an ethics review. A consumer sensor's reading is no diagnosis, and an impact indicator that stayed dark does not show that nobody was hurt."),
        new("reuse", [StepAct.Reuse], "An opened unit is not sealed any more: not to be worn wet, asleep or while charging. Parts that touch skin may carry nickel, acrylates or rubber chemicals."),
        new("rights", [StepAct.Publish], "Circuits may be patented, layouts and texts copyrighted, names protected. Publish facts, your own drawings and your own pictures, and claim no endorsement."),
        new("waste", [StepAct.Dispose], "Cells, boards, solvents and blades go where your waste rules say; insulate the terminals of cells. Damaged cells are mostly barred from post and air freight: ask the carrier."),
        LiveCell,
        DamagedCell,
        DeadCell,
    ];

    /// <summary>The cautions beside an act, in the order of <see cref="All"/>; empty where none bites.</summary>
    public static IReadOnlyList<Caution> For(StepAct act) => [.. All.Where(caution => caution.Acts.Contains(act))];

    /// <summary>The cautions that what was seen of a cell calls for; a cell within ±0.5 V counts as reading zero.</summary>
    public static IReadOnlyList<Caution> For(CellSighting cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        var cautions = new List<Caution>();
        if (cell.Damaged == true) cautions.Add(DamagedCell);
        if (cell.Volts is >= -0.5 and <= 0.5) cautions.Add(DeadCell);
        return cautions;
    }
}
