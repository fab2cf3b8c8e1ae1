using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Pseudonyms;

/// <summary>
/// A pseudonym for every student of a deal: the same whenever it is graded with the same secret, and not to be worked out without it.
/// </summary>
/// <remarks>
/// A keyed digest (HMAC-SHA-256, RFC 2104) of the deal and the student's id. The deal itself is no secret: it follows from the lesson, the
/// class list and a seed that is soon tried out. It stands beside the id so that no two deals share pseudonyms.
/// </remarks>
public sealed class PseudonymKey
{
    private const int Length = 6;

    /// <summary>No vowels, so that no words come about, and nothing that is taken for something else.</summary>
    private const string Letters = "bcdfghjkmnpqrstvwxz23456789";

    private readonly Dictionary<string, string> _byId = new(StringComparer.Ordinal);

    /// <summary>Names the students of a deal anew.</summary>
    /// <param name="dealt">The deal.</param>
    /// <param name="secret">Drawn at random once, and kept by the instructor alone.</param>
    public PseudonymKey(DealtClass dealt, PseudonymSecret secret)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(secret);
        var deal = DigestOf(dealt);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var student in dealt.Students.Select(seat => seat.Who))
        {
            var attempt = 0;
            string pseudonym;
            do pseudonym = Make(secret, deal, student.Id, attempt++);
            while (!taken.Add(pseudonym));
            _byId[student.Id] = pseudonym;
        }

        Entries = [.. dealt.Students.Select(seat => (seat.Who, _byId[seat.Who.Id]))];
    }

    /// <summary>Every student with the pseudonym, in roster order.</summary>
    public IReadOnlyList<(Student Student, string Pseudonym)> Entries { get; }

    /// <summary>The student under another name, without a mail address.</summary>
    internal Student Of(Student student) => new(_byId[student.Id], _byId[student.Id]);

    private static string DigestOf(DealtClass dealt)
    {
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"{dealt.Lesson}\n{dealt.Seed}\n"));
        foreach (var student in dealt.Students)
        {
            text.Append(student.Who.Id);
            foreach (var variant in student.Variants)
            {
                foreach (var given in variant.Exercise.Givens)
                    text.Append(CultureInfo.InvariantCulture, $"\t{variant.Givens[given.Id]}");
            }
            text.Append('\n');
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static string Make(PseudonymSecret secret, string deal, string id, int attempt)
    {
        var digest = secret.DigestOf(string.Create(CultureInfo.InvariantCulture, $"{deal}\n{id}\n{attempt}"));
        return "p-" + string.Concat(digest.Take(Length).Select(value => Letters[value % Letters.Length]));
    }
}
