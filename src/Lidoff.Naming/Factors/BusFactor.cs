using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>A part that answers at an address. What a random part would answer at is taken from the catalogue's own addresses.</summary>
public sealed class BusFactor : ILikelihoodFactor
{
    /// <summary>Addresses a part may have that its row does not list: straps, variants, rows made from one example. A judgement, no source.</summary>
    private const double Unlisted = 0.12;

    /// <summary>Usable 7-bit addresses: 0x08 to 0x77 (UM10204).</summary>
    private const double Addresses = 112;

    /// <inheritdoc/>
    public string Evidence => "bus";

    /// <inheritdoc/>
    public int Order => 70;

    /// <inheritdoc/>
    public double BlunderRate => 0.03;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.Bus is { } bus && (bus.Address is not null || bus.Type.Length > 0);

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => new Reading(this, question);

    private sealed class Reading : IFactorReading
    {
        private readonly BusFactor factor;
        private readonly FactorQuestion question;
        private readonly BusFact bus;
        private readonly double background;
        private readonly Dictionary<string, bool> talks = new(StringComparer.Ordinal);

        internal Reading(BusFactor factor, FactorQuestion question)
        {
            this.factor = factor;
            this.question = question;
            bus = question.Evidence.Bus!;
            double rows = 0, hits = 0;
            foreach (var part in question.Catalogue.Parts.Where(HasAddress))
            {
                rows++;
                hits += bus.Address is { } at ? Listed(part, at) : 0;
            }
            background = (0.75 * hits / Math.Max(rows, 1)) + (0.25 / Addresses);
        }

        public double Part(int index)
        {
            var part = question.Catalogue.Parts[index];
            if (bus.Address is { } at && HasAddress(part)) return Blunder.Cap((Listed(part, at) + (Unlisted / Addresses)) / background, factor.BlunderRate);
            return part.Interface.Length > 0 && !Talks(part) ? Elementary.Log(factor.BlunderRate * 2) : 0;
        }

        public double None(int group) => 0;

        public string Say(int index)
        {
            var part = question.Catalogue.Parts[index];
            return bus.Address is { } at && HasAddress(part)
                ? FactorSentences.Address(at, part.BusAddresses, part.ExampleAddresses)
                : FactorSentences.BusType(bus.Type, part.Interface, Talks(part));
        }

        private static bool HasAddress(Part part) => part.BusAddresses.Count + part.ExampleAddresses.Count > 0;

        /// <summary>
        /// Probability of an address: spread over those stated; one that stood in an example only gets a fifth of the room, or half of it
        /// where nothing was stated.
        /// </summary>
        private static double Listed(Part part, int at)
        {
            var examples = part.ExampleAddresses.Count == 0 ? 0 : part.BusAddresses.Count == 0 ? 0.5 : 0.2;
            var room = part.BusAddresses.Contains(at) ? (1 - examples) / part.BusAddresses.Count : part.ExampleAddresses.Contains(at) ? examples / part.ExampleAddresses.Count : 0;
            return (1 - Unlisted) * room;
        }

        private static bool Has(string words, string word) => words.Contains(word, StringComparison.OrdinalIgnoreCase);

        private bool Talks(Part part)
        {
            if (talks.TryGetValue(part.Interface, out var known)) return known;
            var wanted = bus.Type.Length == 0 ? "i2c" : bus.Type;
            var words = part.Interface;
            // I3C parts answer as I2C ones, and a radio's or a controller's bus depends on its program.
            return talks[part.Interface] = Has(words, wanted) || (wanted == "i2c" && Has(words, "i3c")) || Has(words, "swd") || Has(words, "jtag");
        }
    }
}
