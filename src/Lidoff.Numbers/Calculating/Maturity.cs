namespace Lidoff.Numbers.Calculating;

/// <summary>How far a calculation may be trusted; printed with every number it gives.</summary>
public enum Maturity
{
    /// <summary>Not yet compared with anything outside the project.</summary>
    Experimental,

    /// <summary>Agrees with published values (its reference table has them).</summary>
    Checked,

    /// <summary>Agrees with measured devices.</summary>
    Validated,
}
