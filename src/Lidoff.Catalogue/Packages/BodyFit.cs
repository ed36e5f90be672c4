using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Packages;

/// <summary>Compares measured bodies with stated ones; which side is called the length is left aside.</summary>
public static class BodyFit
{
    /// <summary>True when both known sides agree within a tolerance in mm. An unknown side excludes nothing.</summary>
    public static bool Within(PackageFact package, double? lengthMm, double? widthMm, double toleranceMm)
    {
        if (lengthMm is { } l && widthMm is { } w) (lengthMm, widthMm) = (Math.Max(l, w), Math.Min(l, w));
        return Near(package.LengthMm, lengthMm, toleranceMm) && Near(package.WidthMm, widthMm, toleranceMm);
    }

    private static bool Near(double? stated, double? measured, double toleranceMm) =>
        stated is null || measured is null || Math.Abs(stated.Value - measured.Value) <= toleranceMm;
}
