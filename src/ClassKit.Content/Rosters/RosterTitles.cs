using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>
/// What schools call the columns of a class list, in English and, where a list is as a school in Germany, France, Italy, Portugal, Spain or
/// the Netherlands writes it, in its words. The names of OneRoster 1.2 (1EdTech, CSV tables, users.csv) are among them.
/// </summary>
internal static class RosterTitles
{
    /// <summary>For each field the titles that mean it, the surest first, in small letters and digits alone.</summary>
    private static readonly Dictionary<RosterField, string[]> Titles = new()
    {
        [RosterField.Id] =
        [
            "id",
            "studentid",
            "studentnumber",
            "studentno",
            "studentnr",
            "studentcode",
            "sourcedid",
            "pupilid",
            "pupilnumber",
            "pupilno",
            "pupilnr",
            "pupilcode",
            "upn",
            "uniquepupilnumber",
            "uln",
            "learnerid",
            "learnernumber",
            "learnerno",
            "candidateid",
            "candidatenumber",
            "candidateno",
            "admissionnumber",
            "admissionno",
            "enrolmentnumber",
            "enrollmentnumber",
            "enrolmentno",
            "enrollmentno",
            "matriculationnumber",
            "matriculationno",
            "matriculation",
            "registrationnumber",
            "registrationno",
            "regnumber",
            "regno",
            "rollnumber",
            "rollno",
            "indexnumber",
            "indexno",
            "schoolnumber",
            "schoolno",
            "schoolid",
            "sid",
            "idnumber",
            "userid",
            "username",
            "login",
            "loginid",
            "identifier",
            "number",
            "no",
            "code",
            "matrikelnummer",
            "matrikelnr",
            "matrnr",
            "schülernummer",
            "matricule",
            "numéroétudiant",
            "matricola",
            "matrícula",
            "matricula",
            "studentnummer",
            "leerlingnummer",
        ],
        [RosterField.Name] =
        [
            "name",
            "fullname",
            "studentname",
            "student",
            "displayname",
            "pupil",
            "learner",
            "pupilname",
            "learnername",
            "sortablename",
            "nometprénom",
            "nomprénom",
            "élève",
            "étudiant",
            "cognomeenome",
            "nomeecognome",
            "alunno",
            "studente",
            "nomecompleto",
            "aluno",
            "nombrecompleto",
            "apellidosynombre",
            "nombreyapellidos",
            "alumno",
            "estudiante",
            "schüler",
            "schülerin",
            "leerling",
            "naam",
        ],
        [RosterField.FirstName] =
        [
            "firstname",
            "givenname",
            "forename",
            "first",
            "given",
            "forenames",
            "firstnames",
            "givennames",
            "vorname",
            "rufname",
            "prénom",
            "prenom",
            "prénoms",
            "voornaam",
            "nome",
            "nombre",
            "nombres",
        ],
        [RosterField.LastName] =
        [
            "lastname",
            "familyname",
            "surname",
            "last",
            "family",
            "surnames",
            "lastnames",
            "nachname",
            "familienname",
            "zuname",
            "nom",
            "nomdefamille",
            "cognome",
            "achternaam",
            "apellido",
            "apellidos",
            "apelido",
            "apelidos",
            "sobrenome",
        ],
        [RosterField.Email] =
        [
            "email",
            "emailaddress",
            "mail",
            "schoolemail",
            "studentemail",
            "mailaddress",
            "emails",
            "emailadresse",
            "mailadresse",
            "courriel",
            "adressemail",
            "correo",
            "correoelectrónico",
            "emailadres",
        ],
        [RosterField.Team] =
        [
            "team",
            "teamname",
            "teamnumber",
            "teamno",
            "bench",
            "benchno",
            "benchnumber",
            "benchteam",
            "kitchenteam",
            "workgroup",
            "group",
            "groupname",
            "groupnumber",
            "groupno",
            "gruppe",
            "groupe",
            "équipe",
            "gruppo",
            "squadra",
            "grupo",
            "equipo",
            "equipe",
            "groep",
        ],
        [RosterField.LargePrint] = ["largeprint", "largetype", "18pt", "enlarged"],
        [RosterField.ExtraTime] = ["extratime", "additionaltime", "moretime"],
        [RosterField.Due] = ["due", "duemoment", "ownduedate", "duedate", "extension", "extendedto"],
        [RosterField.LeavesOut] = ["leavesout", "leaveout", "without", "reducedset"],
        [RosterField.ExcusedFrom] = ["excusedfrom", "excused"],
        [RosterField.Formerly] = ["formerly", "formername", "previousname"],
    };

    /// <summary>What a title means, and how sure that is: 0 is surest; null for a title that means nothing here.</summary>
    public static (RosterField Field, int Rank)? Meaning(string title)
    {
        var plain = Plain(title);
        foreach (var (field, titles) in Titles)
        {
            if (Array.IndexOf(titles, plain) is >= 0 and var rank)
                return (field, rank);
        }
        return null;
    }

    /// <summary>Every title, for advice on one that was mistyped.</summary>
    public static IEnumerable<string> All => Titles.Values.SelectMany(titles => titles).Where(title => title.Length > 3);

    /// <summary>Small letters and digits alone: <c>E-mail address</c> is <c>emailaddress</c>.</summary>
    public static string Plain(string title) => string.Concat(title.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
