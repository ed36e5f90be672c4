namespace Lidoff.Numbers.Quantities;

/// <summary>The SI prefixes and how they are typed.</summary>
internal static class SiPrefix
{
    /// <summary>Exponent of a typed prefix; null when it is none. K is taken for kilo (kelvin takes no unit behind it), u and μ for micro.</summary>
    public static int? Exponent(char prefix) => prefix switch
    {
        'a' => -18,
        'f' => -15,
        'p' => -12,
        'n' => -9,
        'u' or '\u00B5' or '\u03BC' => -6,
        'm' => -3,
        'c' => -2,
        'd' => -1,
        'h' => 2,
        'k' or 'K' => 3,
        'M' => 6,
        'G' => 9,
        'T' => 12,
        'P' => 15,
        _ => null,
    };

    /// <summary>The prefix for an engineering exponent (a multiple of three from -18 to 15); empty for 0.</summary>
    public static string Symbol(int exponent) => exponent switch
    {
        -18 => "a",
        -15 => "f",
        -12 => "p",
        -9 => "n",
        -6 => "µ",
        -3 => "m",
        0 => "",
        3 => "k",
        6 => "M",
        9 => "G",
        12 => "T",
        15 => "P",
        _ => throw new ArgumentOutOfRangeException(nameof(exponent), exponent, "expected an engineering exponent"),
    };
}
