import solid from 'eslint-plugin-solid/configs/typescript';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const staticStyle = 'The content security policy refuses a style that is written into the markup: use a class.';

export default defineConfig(
  // Declarations have no code of their own, and the compiler reads some of them for the engine alone.
  { ignores: ['dist/', 'command/', '.cache/', 'src/**/*.d.ts'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.{ts,tsx}'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/ban-ts-comment': ['error', { 'ts-expect-error': true }],
      '@typescript-eslint/consistent-type-imports': 'error',
      // Returning `undefined` together with the fault it stands for reads well.
      '@typescript-eslint/no-confusing-void-expression': 'off',
      // An index that its own loop keeps in range is said with "!"; a made-up default would hide a mistake.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unnecessary-condition': [
        'error',
        { allowConstantLoopConditions: 'only-allowed-literals' },
      ],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      eqeqeq: 'error',
      'max-len': [
        'error',
        { code: 120, ignoreUrls: true, ignoreStrings: true, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true },
      ],
      'no-eval': 'error',
    },
  },
  {
    files: ['src/**/*.{ts,tsx}'],
    rules: {
      // One concept a file: what is longer holds two.
      'max-lines': ['error', 300],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'no-restricted-syntax': ['error', { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' }],
    },
  },
  {
    files: ['src/{core,formula,model,trade,study,files,present,jobs,ui}/**/*.{ts,tsx}'],
    rules: { 'no-console': 'error' },
  },
  {
    files: ['src/main.ts', 'src/ui/**/*.{ts,tsx}', 'tests/ui/**/*.tsx'],
    extends: [solid],
    rules: {
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
        { selector: 'JSXAttribute[name.name="style"] > Literal', message: staticStyle },
        {
          selector: 'JSXAttribute[name.name="style"] ObjectExpression > Property > Literal.value',
          message: staticStyle,
        },
      ],
    },
  },
);
