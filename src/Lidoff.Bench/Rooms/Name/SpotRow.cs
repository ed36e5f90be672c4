using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>A spot with what may sit there.</summary>
/// <param name="Designator">Letter and number.</param>
/// <param name="Role">What it is there for; may be empty.</param>
/// <param name="MarkLines">Its mark as entered, line by line, "?" where a glyph is unreadable.</param>
/// <param name="Measured">Body, pins, pitch in words; may be empty.</param>
/// <param name="Level">The program's own verdict: "part", "family" or "none"; empty where nothing was asked.</param>
/// <param name="Candidates">Best first.</param>
/// <param name="OthersP">Probability of all candidates not listed.</param>
/// <param name="NoneP">Probability that no list holds the part.</param>
public sealed record SpotRow(
    string Designator,
    string Role,
    ValueList<string> MarkLines,
    string Measured,
    string Level,
    ValueList<CandidateRow> Candidates,
    double OthersP,
    double NoneP);
