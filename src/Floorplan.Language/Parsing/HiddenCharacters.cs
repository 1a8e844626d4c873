using System.Globalization;

namespace Floorplan.Language.Parsing;

/// <summary>Control, format and direction-changing characters, which could make a label read other than it is.</summary>
internal static class HiddenCharacters
{
    /// <summary>The first one as <c>U+202E</c>, or null.</summary>
    public static string? FirstOf(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            var category = char.GetUnicodeCategory(text, i);
            bool hidden = category is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse;
            bool half = char.IsSurrogate(text[i]) && !(char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]));
            if (hidden || half)
            {
                return string.Create(CultureInfo.InvariantCulture, $"U+{(int)text[i]:X4}");
            }

            if (char.IsHighSurrogate(text[i]))
            {
                i++;
            }
        }

        return null;
    }
}
