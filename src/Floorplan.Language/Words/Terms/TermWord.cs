using System.Text;

namespace Floorplan.Language.Words.Terms;

/// <summary>The word of the language for a term of the trade: <c>Phases.SinglePhase</c> is written <c>single-phase</c>.</summary>
public static class TermWord
{
    public static string Of<T>(T term)
        where T : struct, Enum
    {
        string name = term.ToString();
        var word = new StringBuilder(name.Length + 2);
        foreach (char letter in name)
        {
            if (char.IsUpper(letter) && word.Length > 0)
            {
                word.Append('-');
            }

            word.Append(char.ToLowerInvariant(letter));
        }

        return word.ToString();
    }
}
