using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells;

/// <summary>Posts at a given spacing between the ends of a wall.</summary>
internal static class PostRow
{
    /// <summary>Closer posts than this are not listed one by one: a bound against nonsense input, own assumption.</summary>
    private static readonly Length ClosestSpacing = Length.FromMillimetres(200);

    public static IEnumerable<FrameMember> Between(
        Side wall, Length from, Length to, Length? spacing, Length width, Length bottom, Length top, string origin)
    {
        if (spacing is not { } step || step < ClosestSpacing)
        {
            yield break;
        }

        int number = 1;
        for (var middle = from + step; middle < to - (step / 2); middle += step)
        {
            yield return new FrameMember(
                FramePart.Post,
                FormattableString.Invariant($"{wall.Word()} wall post {number}"),
                wall,
                middle - (width / 2),
                middle + (width / 2),
                bottom,
                top,
                origin);
            number++;
        }
    }
}
