using Lidoff.Numbers.Quantities;

namespace Lidoff.Opening.Kinds;

/// <summary>One way the device behaves before it is opened; its name is the name of a state of the energy model.</summary>
/// <param name="Name">The state, such as idle, worn, logging, charging.</param>
/// <param name="Says">What it does, in words; empty when not said.</param>
/// <param name="Lights">What its lights do; empty when not said.</param>
/// <param name="Buttons">Which presses lead there or do something there; empty when not said.</param>
/// <param name="LastsS">How long it stays so, s.</param>
/// <param name="CurrentUa">Current drawn in it, µA; negative while it charges.</param>
/// <param name="UUa">Standard uncertainty of the current, µA; null when no current was given or no doubt stated.</param>
public sealed record StateSighting(
    string Name, string Says, string Lights, string Buttons, double? LastsS, double? CurrentUa, double? UUa)
{
    // From here on thousands of microamperes read worse than milliamperes.
    private const double Milli = 1000;

    /// <summary>The current in the unit a person would use: "6.10 ± 0.40 µA", "85.0 ± 4.0 mA"; empty where none was given.</summary>
    public string Current => CurrentUa is not { } current ? "" : Math.Abs(current) >= Milli ? With(current / Milli, UUa / Milli, "mA") : With(current, UUa, "µA");

    private static string With(double value, double? u, string unit) => QuantityText.Noted(value, u, unit).Replace('-', '−');
}
