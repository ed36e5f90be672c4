using Lidoff.Evidence.Pictures;

namespace Lidoff.Evidence.Tests.Pictures;

public sealed class ExifOrientationTests
{
    private static readonly PictureSize Stored = new(6, 4);

    /// <summary>
    /// Exif 2.32 (CIPA DC-008-2019), tag 274: at which visual side the stored 0th row and 0th column lie. The table is the
    /// standard's; the code never mentions it.
    /// </summary>
    [Theory]
    [InlineData(1, "top", "left")]
    [InlineData(2, "top", "right")]
    [InlineData(3, "bottom", "right")]
    [InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top")]
    [InlineData(6, "right", "top")]
    [InlineData(7, "right", "bottom")]
    [InlineData(8, "left", "bottom")]
    public void First_row_and_column_show_where_the_standard_says(int orientation, string row, string column)
    {
        var map = ExifOrientation.ToUpright("stored", "upright", orientation, Stored);
        var size = ExifOrientation.UprightSize(orientation, Stored);
        for (var x = 0.5; x < Stored.Width; x++) Assert.True(At(map.Map(new(x, 0.5)), size, row));
        for (var y = 0.5; y < Stored.Height; y++) Assert.True(At(map.Map(new(0.5, y)), size, column));
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(4, true)]
    [InlineData(5, true)]
    [InlineData(6, false)]
    [InlineData(7, true)]
    [InlineData(8, false)]
    public void Half_of_them_mirror_and_all_keep_areas(int orientation, bool mirrors)
    {
        var map = ExifOrientation.ToUpright("stored", "upright", orientation, Stored);
        Assert.Equal(mirrors, map.MirrorsAt(new(1, 1)));
        Assert.Equal(mirrors ? -1 : 1, map.JacobianAt(new(1, 1)).Determinant);
    }

    [Fact]
    public void Corners_of_the_file_are_corners_of_the_upright_picture()
    {
        for (var orientation = 1; orientation <= 8; orientation++)
        {
            var map = ExifOrientation.ToUpright("stored", "upright", orientation, Stored);
            var (w, h) = ExifOrientation.UprightSize(orientation, Stored) switch { var s => (s.Width, s.Height) };
            PicturePoint[] corners = [new(0, 0), new(w, 0), new(0, h), new(w, h)];
            PicturePoint[] stored = [new(0, 0), new(6, 0), new(0, 4), new(6, 4)];
            Assert.Equal(corners.OrderBy(p => p.X).ThenBy(p => p.Y), stored.Select(map.Map).OrderBy(p => p.X).ThenBy(p => p.Y));
        }
    }

    [Fact]
    public void Missing_and_impossible_values_mean_upright()
    {
        Assert.Equal([1, 1, 1, 1, 8], new int?[] { null, 0, 9, -3, 8 }.Select(ExifOrientation.Known));
        Assert.Throws<ArgumentException>(() => ExifOrientation.ToUpright("a", "b", 9, Stored));
    }

    private static bool At(PicturePoint p, PictureSize size, string side) => side switch
    {
        "top" => p.Y == 0.5,
        "bottom" => p.Y == size.Height - 0.5,
        "left" => p.X == 0.5,
        _ => p.X == size.Width - 0.5,
    };
}
