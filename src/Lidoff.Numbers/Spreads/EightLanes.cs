using System.Numerics;

namespace Lidoff.Numbers.Spreads;

/// <summary>
/// Eight generators side by side (xoshiro256++ of Blackman and Vigna, public domain, seeded by splitmix64): number i comes
/// from generator i mod 8 whatever the vector width, so the stream is the same on every machine.
/// </summary>
public sealed class EightLanes
{
    private const int Lanes = 8;
    private const ulong Golden = 0x9E3779B97F4A7C15;

    // Word w of lane l at [w * 8 + l].
    private readonly ulong[] state = new ulong[4 * Lanes];

    /// <summary>The stream number <paramref name="block"/> under a seed; streams do not overlap in practice.</summary>
    public EightLanes(ulong seed, ulong block = 0)
    {
        var walk = Mix(Mix(seed + Golden) ^ (block + 1));
        for (var lane = 0; lane < Lanes; lane++)
            for (var word = 0; word < 4; word++)
                state[(word * Lanes) + lane] = Mix(walk += Golden);
    }

    /// <summary>Fills with raw 64-bit numbers; the length is a multiple of eight.</summary>
    public void Bits(Span<ulong> into)
    {
        Failing.Guard.That(into.Length % Lanes == 0, "a multiple of eight numbers");
        for (var lane = 0; lane < Lanes; lane += Vector<ulong>.Count)
        {
            var s0 = new Vector<ulong>(state, lane);
            var s1 = new Vector<ulong>(state, Lanes + lane);
            var s2 = new Vector<ulong>(state, (2 * Lanes) + lane);
            var s3 = new Vector<ulong>(state, (3 * Lanes) + lane);
            for (var i = lane; i < into.Length; i += Lanes)
            {
                (RotateLeft(s0 + s3, 23) + s0).CopyTo(into[i..]);
                var t = Vector.ShiftLeft(s1, 17);
                s2 ^= s0;
                s3 ^= s1;
                s1 ^= s2;
                s0 ^= s3;
                s2 ^= t;
                s3 = RotateLeft(s3, 45);
            }

            s0.CopyTo(state, lane);
            s1.CopyTo(state, Lanes + lane);
            s2.CopyTo(state, (2 * Lanes) + lane);
            s3.CopyTo(state, (3 * Lanes) + lane);
        }
    }

    /// <summary>Fills with numbers strictly between 0 and 1, (k + ½)·2⁻⁵² alike; the length is a multiple of eight.</summary>
    public void Uniform(Span<double> into)
    {
        var bits = System.Runtime.InteropServices.MemoryMarshal.Cast<double, ulong>(into);
        Bits(bits);

        // The upper 52 bits as the fraction of a number in [1, 2), less 1 − 2⁻⁵³: exact.
        var one = new Vector<ulong>(0x3FF0000000000000);
        var shift = new Vector<double>(1 - (1.0 / (1L << 53)));
        for (var i = 0; i < bits.Length; i += Vector<ulong>.Count)
            (Vector.AsVectorDouble(Vector.ShiftRightLogical(new Vector<ulong>(bits[i..]), 12) | one) - shift).CopyTo(into[i..]);
    }

    private static Vector<ulong> RotateLeft(Vector<ulong> x, int by) => Vector.ShiftLeft(x, by) | Vector.ShiftRightLogical(x, 64 - by);

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
