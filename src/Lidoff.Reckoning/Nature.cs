namespace Lidoff.Reckoning;

/// <summary>Constants of nature and of mathematics that formulas share.</summary>
internal static class Nature
{
    /// <summary>Metre a second; exact in the SI.</summary>
    public const double SpeedOfLight = 299792458;

    /// <summary>Farad a metre; CODATA 2018.</summary>
    public const double VacuumPermittivity = 8.8541878128e-12;

    /// <summary>Ohm; CODATA 2018.</summary>
    public const double VacuumImpedance = 376.730313668;

    /// <summary>Metre a second squared; 3rd General Conference on Weights and Measures, 1901.</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Natural logarithm of 2.</summary>
    public const double LogOfTwo = 0.6931471805599453;

    /// <summary>Natural logarithm of 10.</summary>
    public const double LogOfTen = 2.302585092994046;
}
