namespace Lidoff.Tests.Demo;

/// <summary>
/// Reads I2C from the changes of both lines, after UM10204 (I2C-bus specification): data falls or rises under a high clock at a start or a
/// stop, a bit is what stands when the clock rises, each ninth is the answer (low) or none. It also keeps the shortest of each time
/// that the specification limits.
/// </summary>
internal sealed class TwoWire
{
    /// <summary>Address, direction and bytes of each transfer, with the answer to each byte, the address first.</summary>
    public List<(double Ns, int Address, bool Reads, List<byte> Bytes, List<bool> Answers)> Transfers { get; } = [];

    /// <summary>Shortest times by their names in the specification, ns.</summary>
    public Dictionary<string, double> Shortest { get; } = new(StringComparer.Ordinal);

    /// <summary>From one rise of the clock to the next within a byte, ns.</summary>
    public List<double> Periods { get; } = [];

    public static TwoWire Read(ValueChanges changes)
    {
        var read = new TwoWire();
        var all = changes.Wires["SCL"].Select(each => (each.Ns, Clock: true, each.High)).Concat(changes.Wires["SDA"].Select(each => (each.Ns, Clock: false, each.High))).OrderBy(each => each.Ns).ToList();
        var (scl, sda, within) = (true, true, false);
        var (rose, fell, moved, began, ended) = (double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);
        var bits = new List<bool>();
        foreach (var (ns, clock, high) in all.Where(each => each.Ns > 0))
        {
            if (clock)
            {
                if (high)
                {
                    read.Keep("tLOW", ns - fell);
                    read.Keep("tSU;DAT", ns - moved);
                    if (within && bits.Count % 9 != 0) read.Periods.Add(ns - rose);
                    if (within) bits.Add(sda);
                    rose = ns;
                }
                else
                {
                    if (double.IsNaN(began)) read.Keep("tHIGH", ns - rose);
                    else read.Keep("tHD;STA", ns - began);
                    (fell, began) = (ns, double.NaN);
                }

                scl = high;
                continue;
            }

            if (scl && !high)
            {
                read.Keep("tBUF", ns - ended);
                (within, began) = (true, ns);
                bits.Clear();
            }
            else if (scl)
            {
                read.Keep("tSU;STO", ns - rose);
                // The rise of the clock before a stop is no bit.
                read.Add(ns, bits[..^1]);
                (within, ended) = (false, ns);
            }

            (sda, moved) = (high, ns);
        }

        Assert.False(within, "the last transfer ends");
        return read;
    }

    private void Add(double ns, List<bool> bits)
    {
        Assert.True(bits.Count >= 9 && bits.Count % 9 == 0, $"{bits.Count} bits");
        var words = bits.Chunk(9).ToList();
        var bytes = words.Select(word => (byte)word[..8].Aggregate(0, (sum, bit) => (sum << 1) | (bit ? 1 : 0))).ToList();
        Transfers.Add((ns, bytes[0] >> 1, (bytes[0] & 1) != 0, bytes[1..], [.. words.Select(word => !word[8])]));
    }

    private void Keep(string name, double ns)
    {
        if (!double.IsNaN(ns)) Shortest[name] = Math.Min(ns, Shortest.GetValueOrDefault(name, double.PositiveInfinity));
    }
}
