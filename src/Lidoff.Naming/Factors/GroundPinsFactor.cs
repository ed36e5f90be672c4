using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>
/// Pins found on ground against the pin list. A pin that is not in the list proves nothing: hidden and trailing pads are often left
/// out of pin lists. A free input tied low looks like ground too.
/// </summary>
public sealed class GroundPinsFactor : ILikelihoodFactor
{
    /// <summary>About one pin in six of the shipped pin lists is ground.</summary>
    private const double Background = 0.17;

    /// <summary>How often a pin that is not ground by name is found on ground: inputs, address straps and spare pins tied low.</summary>
    private const double TiedLow = 0.06;

    /// <summary>Whatever is touched, the whole set says no more than this (natural log, about 17 dB): all of it hangs on one pin 1 being found.</summary>
    private const double Most = 4;

    /// <inheritdoc/>
    public string Evidence => "ground_pins";

    /// <inheritdoc/>
    public int Order => 65;

    /// <summary>A body counted from the wrong corner.</summary>
    public double BlunderRate => 0.05;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.GroundPins.Count > 0;

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => new Reading(this, question);

    /// <summary>Ground by the pin's name.</summary>
    internal static bool IsGround(Pin pin)
    {
        var name = pin.Name.ToUpperInvariant();
        return name.Contains("GND", StringComparison.Ordinal) || name.StartsWith("VSS", StringComparison.Ordinal) || name is "EP" or "EPAD" or "PAD" or "AVSS" or "DVSS" or "GROUND";
    }

    private sealed class Reading : IFactorReading
    {
        private readonly FactorQuestion question;
        private readonly Dictionary<int, double> logs = [];

        internal Reading(GroundPinsFactor factor, FactorQuestion question)
        {
            this.question = question;
            var ratios = new SortedDictionary<(int Part, int List), double>();
            foreach (var number in question.Evidence.GroundPins)
            {
                foreach (var (part, list, ground) in question.Catalogue.ByPin.GetValueOrDefault(number, []))
                    ratios[(part, list)] = ratios.GetValueOrDefault((part, list), 1) * (ground ? 0.95 : TiedLow) / Background;
            }
            foreach (var part in ratios.GroupBy(r => r.Key.Part))
            {
                // A pin list without any of these pins says nothing: ratio 1.
                var lists = question.Catalogue.Parts[part.Key].PinLists.Count;
                var mean = (part.Sum(r => r.Value) + lists - part.Count()) / lists;
                logs[part.Key] = Math.Min(Most, Blunder.Cap(mean, factor.BlunderRate));
            }
        }

        public double Part(int index) => logs.GetValueOrDefault(index);

        public double None(int group) => 0;

        public string Say(int index)
        {
            // The pin list that fits best is the one worth showing.
            var part = question.Catalogue.Parts[index];
            return FactorSentences.GroundPins(question.Evidence.GroundPins, [.. (part.PinLists.OrderByDescending(Ratio).FirstOrDefault()?.Pins ?? []).Where(IsGround).Select(p => p.Number)]);
        }

        private double Ratio(PinList list)
        {
            var ratio = 1.0;
            foreach (var number in question.Evidence.GroundPins)
            {
                if (list.Pins.FirstOrDefault(p => p.Number == number) is { } pin) ratio *= (IsGround(pin) ? 0.95 : TiedLow) / Background;
            }
            return ratio;
        }
    }
}
