namespace Lidoff.Reckoning.Buses;

/// <summary>How an open-drain line rises.</summary>
internal static class BusRise
{
    /// <summary>Time from 30 to 70 % over R C: ln(7 / 3), printed as 0.8473 in UM10204 section 7.1.</summary>
    public const double ThirtyToSeventy = 0.8472978603872036;
}
