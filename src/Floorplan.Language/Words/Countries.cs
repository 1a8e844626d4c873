using Floorplan.Language.Diagnostics;

namespace Floorplan.Language.Words;

/// <summary>
/// Countries by the two letters of ISO 3166-1 (the United Kingdom as <c>uk</c>), and the states of the United States by ISO 3166-2, such
/// as <c>us-wa</c>. From memory.
/// </summary>
public static class Countries
{
    private const string Listed = """
        af Afghanistan;al Albania;dz Algeria;ad Andorra;ao Angola;ag Antigua and Barbuda;ar Argentina;am Armenia;au Australia;
        at Austria;az Azerbaijan;bs Bahamas;bh Bahrain;bd Bangladesh;bb Barbados;by Belarus;be Belgium;bz Belize;bj Benin;
        bt Bhutan;bo Bolivia;ba Bosnia and Herzegovina;bw Botswana;br Brazil;bn Brunei;bg Bulgaria;bf Burkina Faso;bi Burundi;
        cv Cabo Verde;kh Cambodia;cm Cameroon;ca Canada;cf Central African Republic;td Chad;cl Chile;cn China;co Colombia;
        km Comoros;cg Congo;cd Congo (Kinshasa);cr Costa Rica;ci Ivory Coast;hr Croatia;cu Cuba;cy Cyprus;cz Czechia;
        dk Denmark;dj Djibouti;dm Dominica;do Dominican Republic;ec Ecuador;eg Egypt;sv El Salvador;gq Equatorial Guinea;
        er Eritrea;ee Estonia;sz Eswatini;et Ethiopia;fo Faroe Islands;fj Fiji;fi Finland;fr France;ga Gabon;gm Gambia;
        ge Georgia;de Germany;gh Ghana;gr Greece;gl Greenland;gd Grenada;gt Guatemala;gn Guinea;gw Guinea-Bissau;gy Guyana;
        ht Haiti;hn Honduras;hk Hong Kong;hu Hungary;is Iceland;in India;id Indonesia;ir Iran;iq Iraq;ie Ireland;
        im Isle of Man;il Israel;it Italy;jm Jamaica;jp Japan;je Jersey;jo Jordan;kz Kazakhstan;ke Kenya;ki Kiribati;
        kp North Korea;kr South Korea;kw Kuwait;kg Kyrgyzstan;la Laos;lv Latvia;lb Lebanon;ls Lesotho;lr Liberia;ly Libya;
        li Liechtenstein;lt Lithuania;lu Luxembourg;mg Madagascar;mw Malawi;my Malaysia;mv Maldives;ml Mali;mt Malta;
        mh Marshall Islands;mr Mauritania;mu Mauritius;mx Mexico;fm Micronesia;md Moldova;mc Monaco;mn Mongolia;me Montenegro;
        ma Morocco;mz Mozambique;mm Myanmar;na Namibia;nr Nauru;np Nepal;nl Netherlands;nz New Zealand;ni Nicaragua;ne Niger;
        ng Nigeria;mk North Macedonia;no Norway;om Oman;pk Pakistan;pw Palau;ps Palestine;pa Panama;pg Papua New Guinea;
        py Paraguay;pe Peru;ph Philippines;pl Poland;pt Portugal;qa Qatar;ro Romania;ru Russia;rw Rwanda;
        kn Saint Kitts and Nevis;lc Saint Lucia;vc Saint Vincent and the Grenadines;ws Samoa;sm San Marino;
        st Sao Tome and Principe;sa Saudi Arabia;sn Senegal;rs Serbia;sc Seychelles;sl Sierra Leone;sg Singapore;sk Slovakia;
        si Slovenia;sb Solomon Islands;so Somalia;za South Africa;ss South Sudan;es Spain;lk Sri Lanka;sd Sudan;sr Suriname;
        se Sweden;ch Switzerland;sy Syria;tw Taiwan;tj Tajikistan;tz Tanzania;th Thailand;tl Timor-Leste;tg Togo;to Tonga;
        tt Trinidad and Tobago;tn Tunisia;tr Turkey;tm Turkmenistan;tv Tuvalu;ug Uganda;ua Ukraine;ae United Arab Emirates;
        uk United Kingdom;us United States;uy Uruguay;uz Uzbekistan;vu Vanuatu;va Vatican;ve Venezuela;vn Vietnam;ye Yemen;
        zm Zambia;zw Zimbabwe
        """;

    private const string States = """
        al Alabama;ak Alaska;az Arizona;ar Arkansas;ca California;co Colorado;ct Connecticut;de Delaware;
        dc District of Columbia;fl Florida;ga Georgia (US);hi Hawaii;id Idaho;il Illinois;in Indiana;ia Iowa;ks Kansas;
        ky Kentucky;la Louisiana;me Maine;md Maryland;ma Massachusetts;mi Michigan;mn Minnesota;ms Mississippi;mo Missouri;
        mt Montana;ne Nebraska;nv Nevada;nh New Hampshire;nj New Jersey;nm New Mexico;ny New York;nc North Carolina;
        nd North Dakota;oh Ohio;ok Oklahoma;or Oregon;pa Pennsylvania;pr Puerto Rico;ri Rhode Island;sc South Carolina;
        sd South Dakota;tn Tennessee;tx Texas;ut Utah;vt Vermont;va Virginia;wa Washington;wv West Virginia;wi Wisconsin;
        wy Wyoming
        """;

    /// <summary>Of the European Union, and those of the European Economic Area that take over its food law.</summary>
    private static readonly HashSet<string> European =
    [
        "at", "be", "bg", "hr", "cy", "cz", "dk", "ee", "fi", "fr", "de", "gr", "hu", "ie", "it", "lv", "lt", "lu", "mt", "nl", "pl", "pt",
        "ro", "sk", "si", "es", "se", "is", "li", "no",
    ];

    /// <summary>Name by word: <c>de</c>, <c>us-wa</c>.</summary>
    public static IReadOnlyDictionary<string, string> Names { get; } = Parts(Listed)
        .Select(p => (Word: p[..2], Name: p[3..]))
        .Concat(Parts(States).Select(p => (Word: "us-" + p[..2], Name: p[3..])))
        .ToDictionary(p => p.Word, p => p.Name, StringComparer.Ordinal);

    /// <summary>Whether the law of the European Union holds there, or is kept there as in the United Kingdom.</summary>
    public static bool IsEuropean(string word) => word == "uk" || European.Contains(word);

    public static bool IsAmerican(string word) => word == "us" || word.StartsWith("us-", StringComparison.Ordinal);

    /// <summary>For a word that is none of them: what was meant, by name or by word.</summary>
    internal static string Hint(string wrong)
    {
        var near = wrong == "gb" ? ["uk"] : NearNames.Find(wrong, Names.Values).Select(WordOf).Concat(
            NearNames.Find(wrong, Names.Keys)).Distinct().Take(3).ToList();
        string written = near.Count == 0 ? "" : $"did you mean {string.Join(" or ", near.Select(w => $"`{w}` ({Names[w]})"))}? ";
        return written + "countries are written as two letters, such as `de`, states of the United States as `us-wa`";
    }

    private static string WordOf(string name) => Names.First(n => n.Value == name).Key;

    private static IEnumerable<string> Parts(string text)
        => text.Split([';', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
