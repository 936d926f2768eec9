//! Fixed texts of the quote: its screen, its sheets, its files.

labels! {
/// A fixed text of the quote.
QuoteLabel {
    Quote = "Quote" / "Oferta" / "Devis",
    Letters = "QT" / "QT" / "QT",
    InternalLetters = "QI" / "QI" / "QI",
    InternalSheet = "Quote, internal" / "Oferta, uso interno" / "Devis, usage interne",
    Draft = "draft" / "borrador" / "brouillon",
    DraftMark = "Draft, not issued" / "Borrador, no emitida" / "Brouillon, non émis",
    RevisionWord = "Revision" / "Revisión" / "Révision",
    Accepted = "accepted by · date" / "aceptada por · fecha" / "accepté par · date",
    CheckedBy = "checked by · date" / "revisada por · fecha" / "vérifié par · date",
    InternalMark = "Internal: cost and margin. Not for the customer."
        / "Uso interno: coste y margen. No es para el cliente."
        / "Usage interne : coût et marge. Pas pour le client.",
    ValidUntil = "Valid until" / "Válida hasta" / "Valable jusqu’au",
    Currency = "Currency" / "Moneda" / "Monnaie",
    CurrencyHint = "code of three letters: USD, EUR"
        / "código de tres letras: USD, EUR"
        / "code de trois lettres : USD, EUR",
    Places = "Decimal places" / "Decimales" / "Décimales",
    PlacesByCode = "by the code" / "según el código" / "d’après le code",
    HalvesTitle = "Half of the last place" / "Mitad de la última cifra" / "Moitié du dernier chiffre",
    HalvesUp = "up" / "hacia arriba" / "vers le haut",
    HalvesEven = "to the even one" / "a la cifra par" / "vers le chiffre pair",
    WayTitle = "Prices by" / "Precios según" / "Prix d’après",
    WayList = "price list" / "lista de precios" / "liste de prix",
    WayMarkup = "cost and markup" / "coste y recargo" / "coût et majoration",
    WayMargin = "cost and margin" / "coste y margen" / "coût et marge",
    Markup = "Markup on the cost" / "Recargo sobre el coste" / "Majoration du coût",
    MarginOfPrice = "Margin on the price" / "Margen sobre el precio" / "Marge sur le prix",
    Discount = "Discount" / "Descuento" / "Remise",
    DiscountWhole = "Discount on the whole" / "Descuento sobre el conjunto" / "Remise sur l’ensemble",
    DiscountHint = "on lines and work, not on freight"
        / "sobre líneas y trabajo, no sobre el transporte"
        / "sur les lignes et le travail, pas sur le transport",
    Freight = "Freight" / "Transporte" / "Transport",
    FreightRate = "Freight for each unit of weight"
        / "Transporte por unidad de peso"
        / "Transport par unité de poids",
    FreightLeast = "Freight at least" / "Transporte al menos" / "Transport au moins",
    FreightWeight = "Weight for freight" / "Peso para el transporte" / "Poids pour le transport",
    FreightWeightHint = "left empty: what the lines weigh, rounded up"
        / "vacío: lo que pesan las líneas, hacia arriba"
        / "vide : ce que pèsent les lignes, arrondi en haut",
    FreightBy = "Freight by" / "Transporte por" / "Transport par",
    ByPound = "the pound" / "libra" / "livre",
    ByKilogram = "the kilogram" / "kilogramo" / "kilogramme",
    WithoutParts = "parts whose weight isn't known are left out"
        / "las piezas de peso desconocido no se cuentan"
        / "les pièces de poids inconnu ne sont pas comptées",
    LabourPrice = "An hour sells for" / "Una hora se vende a" / "Une heure se vend",
    LabourCost = "An hour costs" / "Una hora cuesta" / "Une heure coûte",
    LabourTitle = "Work" / "Trabajo" / "Travail",
    LabourHint = "Hours for one vessel, by kind of job and size. A vessel takes the smallest size that holds it."
        / "Horas para un recipiente, por tipo de trabajo y tamaño. Un recipiente toma el tamaño más pequeño en que cabe."
        / "Heures pour une cuve, par type de chantier et taille. Une cuve prend la plus petite taille qui la contient.",
    LabourAdd = "Add a row of hours" / "Añadir una fila de horas" / "Ajouter une ligne d’heures",
    LabourKind = "Kind of job" / "Tipo de trabajo" / "Type de chantier",
    LabourAny = "any" / "cualquiera" / "n’importe lequel",
    LabourUpTo = "Inside diameter up to" / "Diámetro interior hasta" / "Diamètre intérieur jusqu’à",
    LabourHours = "Hours for a vessel" / "Horas para un recipiente" / "Heures pour une cuve",
    LabourRemove = "Remove this row" / "Quitar esta fila" / "Retirer cette ligne",
    TaxTitle = "Tax" / "Impuesto" / "Taxe",
    TaxHint = "The first class is the usual one. Without a class no tax is charged."
        / "La primera clase es la habitual. Sin clase no se cobra impuesto."
        / "La première classe est la classe usuelle. Sans classe, aucune taxe n’est comptée.",
    TaxAdd = "Add a tax class" / "Añadir una clase de impuesto" / "Ajouter une classe de taxe",
    TaxName = "Tax class" / "Clase de impuesto" / "Classe de taxe",
    TaxRate = "Rate" / "Tipo" / "Taux",
    TaxRemove = "Remove this class" / "Quitar esta clase" / "Retirer cette classe",
    TaxUsual = "usual" / "habitual" / "usuelle",
    Untaxed = "no tax" / "sin impuesto" / "sans taxe",
    NoTax = "No tax is included." / "No se incluye ningún impuesto." / "Aucune taxe n’est comprise.",
    LinesTitle = "Lines" / "Líneas" / "Lignes",
    NoLines = "No line yet. Plan a layer, or write a line of your own."
        / "Todavía no hay líneas. Planifique una capa o escriba una línea propia."
        / "Aucune ligne pour l’instant. Prévoyez une couche, ou écrivez une ligne à vous.",
    AddLine = "Add a line" / "Añadir una línea" / "Ajouter une ligne",
    Name = "Description" / "Descripción" / "Désignation",
    PartNumber = "Part number" / "Referencia" / "Référence",
    Quantity = "Quantity" / "Cantidad" / "Quantité",
    UnitWord = "Unit" / "Unidad" / "Unité",
    Price = "Price of one" / "Precio de uno" / "Prix unitaire",
    Cost = "Cost of one" / "Coste de uno" / "Coût unitaire",
    LineNote = "Note" / "Nota" / "Note",
    LineTax = "Tax class" / "Clase de impuesto" / "Classe de taxe",
    StandingTitle = "This line is" / "Esta línea es" / "Cette ligne est",
    Firm = "part of the quote" / "parte de la oferta" / "comprise dans le devis",
    Optional = "optional" / "opcional" / "en option",
    Alternate = "an alternate" / "una alternativa" / "une variante",
    InsteadOf = "In place of" / "En lugar de" / "À la place de",
    InsteadOfLine = "in place of" / "en lugar de" / "à la place de",
    NotCounted = "not in the total" / "fuera del total" / "hors total",
    OnRequest = "on request" / "a consultar" / "sur demande",
    OnRequestChoice = "Price on request" / "Precio a consultar" / "Prix sur demande",
    Gap = "price missing" / "sin precio" / "sans prix",
    GapsTitle = "Prices are missing. Type them, take the lines out, or say that the price is given on request."
        / "Faltan precios. Escríbalos, quite las líneas o diga que el precio se da a consulta."
        / "Des prix manquent. Saisissez-les, retirez les lignes, ou dites que le prix est donné sur demande.",
    QuantityMissing = "hours missing" / "faltan horas" / "heures manquantes",
    TakeOut = "Take this line out" / "Quitar esta línea" / "Retirer cette ligne",
    TakenOut = "Taken out" / "Quitado" / "Retiré",
    Why = "Why" / "Por qué" / "Pourquoi",
    WhyMissing = "no reason given yet" / "aún sin motivo" / "pas encore de raison",
    PutBack = "Put it back" / "Volver a ponerla" / "La remettre",
    Erase = "Erase this line" / "Borrar esta línea" / "Effacer cette ligne",
    Details = "more" / "más" / "plus",
    FromList = "from the price list" / "de la lista de precios" / "de la liste de prix",
    FromCost = "from the cost" / "a partir del coste" / "à partir du coût",
    FromTyped = "typed here" / "escrito aquí" / "saisi ici",
    Each = "each" / "unidad" / "pièce",
    HeadItem = "item" / "artículo" / "article",
    HeadQuantity = "quantity" / "cantidad" / "quantité",
    HeadPrice = "price each" / "precio unitario" / "prix unitaire",
    HeadAmount = "amount" / "importe" / "montant",
    HeadCost = "cost each" / "coste unitario" / "coût unitaire",
    HeadCostAll = "cost" / "coste" / "coût",
    HeadMargin = "margin" / "margen" / "marge",
    HeadDiscount = "off" / "dto." / "remise",
    Position = "no." / "n.º" / "n°",
    Materials = "Materials and parts" / "Materiales y piezas" / "Matériaux et pièces",
    Work = "Work" / "Trabajo" / "Travail",
    Further = "Further lines" / "Otras líneas" / "Autres lignes",
    OptionalTitle = "Optional, not in the total" / "Opcional, fuera del total" / "En option, hors total",
    AlternateTitle = "Alternates, not in the total" / "Alternativas, fuera del total" / "Variantes, hors total",
    SumTitle = "Sum" / "Suma" / "Somme",
    SumLines = "Lines together" / "Líneas juntas" / "Lignes ensemble",
    SumDiscount = "Discount" / "Descuento" / "Remise",
    SumNet = "Before tax" / "Antes de impuestos" / "Hors taxes",
    SumTax = "Tax" / "Impuesto" / "Taxe",
    SumOn = "on" / "sobre" / "sur",
    Total = "Total" / "Total" / "Total",
    TotalOpen = "Total so far" / "Total hasta ahora" / "Total jusqu’ici",
    CostTogether = "Cost" / "Coste" / "Coût",
    Margin = "Margin" / "Margen" / "Marge",
    MarginUnknown = "not known: cost missing" / "desconocido: falta un coste" / "inconnue : un coût manque",
    LinesWithoutPrice = "without a price" / "sin precio" / "sans prix",
    LinesWithoutCost = "without a cost" / "sin coste" / "sans coût",
    FreightCostOut = "Freight is charged as it costs: neither cost nor margin counts it."
        / "El transporte se cobra a su coste: ni el coste ni el margen lo cuentan."
        / "Le transport est facturé à son coût : ni le coût ni la marge ne le comptent.",
    RestsOn = "What it rests on" / "En qué se apoya" / "Sur quoi il repose",
    NothingRests = "No vessel is planned; nothing is assumed."
        / "Ningún recipiente está planificado; no se supone nada."
        / "Aucune cuve n’est prévue ; rien n’est supposé.",
    WasMeasured = "measured:" / "medido:" / "mesuré :",
    IsAssumed = "assumed until measured:" / "supuesto hasta medirlo:" / "supposé jusqu’à la mesure :",
    PacksTitle = "Packs" / "Envases" / "Conditionnements",
    PooledOverJob = "All vessels together:" / "Todos los recipientes juntos:" / "Toutes les cuves ensemble :",
    FewerPooled = "fewer when pooled" / "menos al juntar" / "de moins en commun",
    YearTitle = "In a year" / "En un año" / "En un an",
    WashTime = "Time of one backwash" / "Tiempo de un retrolavado" / "Temps d’un rétrolavage",
    WashesPerYear = "Backwashes a year" / "Retrolavados al año" / "Rétrolavages par an",
    SaltPerYear = "Salt a year" / "Sal al año" / "Sel par an",
    SaltHint = "for what the water's analysis doesn't give"
        / "para lo que no da el análisis del agua"
        / "pour ce que l’analyse de l’eau ne donne pas",
    YearHint = "Wash water is the setting that is fitted or fits best, times these."
        / "El agua de lavado es el ajuste montado o el que mejor va, por estos."
        / "L’eau de lavage est le réglage monté ou celui qui va le mieux, multiplié par ceux-ci.",
    NoWashWater = "wash water can't be worked out: the backwash setting isn't known yet."
        / "el agua de lavado no se puede calcular: aún no se conoce el ajuste de retrolavado."
        / "l’eau de lavage ne peut pas être calculée : le réglage du rétrolavage n’est pas encore connu.",
    LeftOutTitle = "Not counted" / "No contado" / "Non compté",
    ExclusionsTitle = "Not included" / "No incluido" / "Non compris",
    Exclusions = "What isn't included" / "Lo que no se incluye" / "Ce qui n’est pas compris",
    NotesTitle = "Notes" / "Notas" / "Notes",
    Notes = "Notes on the quote" / "Notas sobre la oferta" / "Notes sur le devis",
    WordsTitle = "In the customer's words" / "En palabras del cliente" / "Dans les mots du client",
    CustomerWords = "The customer's own words" / "Las palabras del cliente" / "Les mots du client",
    TermsTitle = "Terms" / "Condiciones" / "Conditions",
    PricingTitle = "Pricing" / "Precios" / "Prix",
    RemovedTitle = "Taken out, and why" / "Quitado, y por qué" / "Retiré, et pourquoi",
    IssueTitle = "Issue" / "Emisión" / "Émission",
    Issue = "Issue revision" / "Emitir la revisión" / "Émettre la révision",
    IssueHint = "Issuing freezes a copy with its prices and texts. Later prices don't change it."
        / "Al emitir se fija una copia con sus precios y textos. Los precios posteriores no la cambian."
        / "L’émission fige une copie avec ses prix et ses textes. Les prix ultérieurs ne la changent pas.",
    Issued = "Issued" / "Emitida" / "Émis",
    NoneIssued = "Nothing issued yet." / "Todavía no se ha emitido nada." / "Rien n’a encore été émis.",
    RefusedEmpty = "There is no line to quote."
        / "No hay ninguna línea que ofertar."
        / "Il n’y a aucune ligne à chiffrer.",
    RefusedGaps = "lines have no price. Type it, take the line out, or choose “price on request”."
        / "líneas no tienen precio. Escríbalo, quite la línea o elija «precio a consultar»."
        / "lignes n’ont pas de prix. Saisissez-le, retirez la ligne, ou choisissez « prix sur demande ».",
    RefusedGap = "line has no price. Type it, take the line out, or choose “price on request”."
        / "línea no tiene precio. Escríbalo, quite la línea o elija «precio a consultar»."
        / "ligne n’a pas de prix. Saisissez-le, retirez la ligne, ou choisissez « prix sur demande ».",
    RefusedWrong = "Something typed makes no sense yet; it is marked under its field."
        / "Algo escrito aún no tiene sentido; está marcado bajo su campo."
        / "Quelque chose de saisi n’a pas encore de sens ; c’est marqué sous son champ.",
    RefusedCurrency = "Type the currency first." / "Escriba antes la moneda." / "Saisissez d’abord la monnaie.",
    RefusedLocked = "The quote of this job is from a later version and can't be changed here."
        / "La oferta de este trabajo es de una versión posterior y aquí no se puede cambiar."
        / "Le devis de ce chantier vient d’une version plus récente et ne peut pas être modifié ici.",
    SameAsIssued = "Nothing has changed since revision"
        / "Nada ha cambiado desde la revisión"
        / "Rien n’a changé depuis la révision",
    ShowDraft = "The draft" / "El borrador" / "Le brouillon",
    WhichShown = "Shown" / "Se muestra" / "Affiché",
    WhichSheet = "Sheet" / "Hoja" / "Feuille",
    CustomerSheet = "For the customer" / "Para el cliente" / "Pour le client",
    InternalChoice = "Internal, with cost" / "Uso interno, con coste" / "Usage interne, avec coût",
    CompareTitle = "Compare" / "Comparar" / "Comparer",
    CompareWith = "Compare with" / "Comparar con" / "Comparer avec",
    CompareNone = "Nothing is changed." / "No ha cambiado nada." / "Rien n’a changé.",
    ChangeAdded = "new" / "nueva" / "nouvelle",
    ChangeGone = "gone" / "quitada" / "retirée",
    ChangeChanged = "changed" / "cambiada" / "modifiée",
    Was = "was" / "antes" / "avant",
    TakeCsv = "File for the books (CSV)"
        / "Archivo para la contabilidad (CSV)"
        / "Fichier pour la comptabilité (CSV)",
    CopyText = "Copy as text" / "Copiar como texto" / "Copier en texte",
    ShareText = "Share as text" / "Compartir como texto" / "Partager en texte",
    Copied = "Copied." / "Copiado." / "Copié.",
    NotCopied = "This browser doesn't let a page copy. Select the text below and copy it."
        / "Este navegador no deja copiar a una página. Seleccione el texto de abajo y cópielo."
        / "Ce navigateur ne laisse pas une page copier. Sélectionnez le texte ci-dessous et copiez-le.",
    TakeOver = "Take over the ways of the latest quote"
        / "Tomar el modo de la última oferta"
        / "Reprendre les façons du dernier devis",
    Catalogue = "price list" / "lista de precios" / "liste de prix",
    Rounded = "rounded to" / "redondeado a" / "arrondi à",
    RoundedPlaces = "places" / "decimales" / "décimales",
    HalvesUpNote = "halves up" / "mitades hacia arriba" / "moitiés vers le haut",
    HalvesEvenNote = "halves to the even digit" / "mitades a la cifra par" / "moitiés vers le chiffre pair",
    Outdated = "prices of the price list have changed since this job took them."
        / "precios de la lista han cambiado desde que este trabajo los tomó."
        / "prix de la liste ont changé depuis que ce chantier les a pris.",
    TakePrices = "Take the new prices" / "Tomar los precios nuevos" / "Prendre les nouveaux prix",
    WarrantNone = "Quantities follow from the figures above; measure what is assumed before ordering."
        / "Las cantidades se siguen de las cifras de arriba; mida lo supuesto antes de pedir."
        / "Les quantités découlent des chiffres ci-dessus ; mesurez ce qui est supposé avant de commander.",
}}
