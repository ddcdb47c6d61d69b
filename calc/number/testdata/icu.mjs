// Writes testdata/published/icu-numbers.csv: how ICU writes numbers.
const command = "node calc/number/testdata/icu.mjs > testdata/published/icu-numbers.csv";

const locales = `en-US en-GB en-CA en-IN en-ZA de de-AT de-CH fr fr-CA fr-CH es-ES es-MX es-US es-AR pt-BR pt-PT
  it it-CH nl sv nb da fi is pl cs sk hu ro el tr ru uk bg sl hr lt lv et he ar ar-EG ar-u-nu-latn ar-u-nu-arab
  fa ur hi mr ne bn ta th my vi id ja zh zh-TW ko`.split(/\s+/);

const numbers = [
  ["decimals", 1234.5, 2], ["decimals", 12345.678, 1], ["decimals", -1234567.25, 2], ["decimals", 2.675, 2],
  ["decimals", -0.004, 2], ["digits", 691.860465, 4], ["digits", 1750, 4], ["digits", -0.0625, 3],
  ["digits", 99.96, 3], ["digits", 999999.5, 6], ["digits", 123456789012, 12],
];

// What can't be told apart on paper is written out.
const visible = text => text.replace(/[\p{Cf}\p{Zs}"\\]/gu, c => "\\u" + c.charCodeAt(0).toString(16).padStart(4, "0"));
const quoted = text => text.includes(",") ? `"${text}"` : text;

const v = process.versions;
console.log(`# Numbers as ICU ${v.icu} with CLDR ${v.cldr} writes them, in Node ${v.node}: Intl.NumberFormat, with a count of
# decimals or of significant digits. plain is the rounded number without a language; in text, spaces and marks
# of direction are escaped. To renew: ${command}
locale,count,n,number,plain,text`);
for (const locale of locales) {
  for (const [count, number, n] of numbers) {
    const options = count === "digits"
      ? { minimumSignificantDigits: n, maximumSignificantDigits: n }
      : { minimumFractionDigits: n, maximumFractionDigits: n };
    options.signDisplay = "negative"; // no minus before zero
    const plain = new Intl.NumberFormat("en-US", { ...options, useGrouping: false }).format(number);
    console.log([locale, count, n, number, plain, quoted(visible(new Intl.NumberFormat(locale, options).format(number)))].join());
  }
}
