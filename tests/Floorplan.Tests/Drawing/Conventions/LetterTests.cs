using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Views;
using Floorplan.Language.Syntax;
using Floorplan.Model.Rooms;
using Xunit;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Tests.Drawing.Conventions;

public class LetterTests
{
    /// <summary>Before, S was south, a dry room and supplies, and W was west, waste and waste water.</summary>
    [Fact]
    public void No_letter_of_zone_stream_or_compass_has_two_meanings()
    {
        string[] letters =
        [
            .. Enum.GetValues<HygieneClass>().Select(c => ZoneLook.Of(c).Letter),
            .. Enum.GetValues<Stream>().Select(s => StreamLook.Of(s).Letter),
            .. Enum.GetValues<Side>().Select(s => s.Letter()),
        ];
        Assert.Equal(16, letters.Length);
        Assert.Equal(letters.Length, letters.Distinct().Count());
    }
}
